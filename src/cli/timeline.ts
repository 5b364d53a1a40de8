import { describeStep, has, INPUTS } from '../../machines/burner/index.ts';
import type { Run, RunEvent, RunSetup, TimedAction } from '../engine/index.ts';
import { FAULTS } from '../faults/index.ts';
import { message, sayWord } from '../i18n/index.ts';
import type { Runnable } from './choose-scenario.ts';
import { roundTime } from './json-lines.ts';
import { alignColumns } from './table.ts';

export interface TimelineContext {
  readonly chosen: Runnable;
  readonly setup: RunSetup;
  readonly run: Run;
}

type Lockout = Extract<RunEvent, { type: 'lockout' }>;

/** A run for people: one line an event, a lockout explained, nothing that a machine should read. */
export function timeline(events: readonly RunEvent[], context: TimelineContext): string {
  const { chosen, setup } = context;
  const heading = [
    message('run.heading', { title: chosen.title, id: chosen.id }),
    message('run.setting', { plant: setup.plant.id, profile: setup.profile.id, seed: setup.seed }),
  ];
  if (chosen.caution !== undefined) {
    heading.push(message('run.caution', { caution: chosen.caution.trim() }));
  }
  const rows = events.flatMap((event) => {
    const [first = '', ...more] = linesOf(event, context);
    const time = roundTime(event.t).toFixed(2).padStart(9);
    return [[time, message(`event.${event.type}`), first], ...more.map((line) => ['', '', line])];
  });
  return `${heading.join('\n')}\n\n${alignColumns(rows)}`;
}

function linesOf(event: RunEvent, context: TimelineContext): string[] {
  switch (event.type) {
    case 'step':
      return [event.step];
    case 'proved':
    case 'lost':
      return [event.what];
    case 'command':
      return [message('event.command.text', { device: event.device, to: event.to })];
    case 'lockout':
      return lockoutLines(event, context);
    case 'reset':
      return [message('event.reset.text', { count: event.count })];
    case 'action':
      return [actionText(event.action)];
    case 'fault':
      return [
        event.on
          ? message('event.fault.on', {
              fault: event.fault,
              severity: severityText(event.fault, event.severity),
            })
          : message('event.fault.off', { fault: event.fault }),
      ];
    case 'end': {
      const { step, lockout, hash } = event;
      return [
        lockout === null
          ? message('event.end.text', { step, hash })
          : message('event.end.locked-out', { cause: lockout, hash }),
      ];
    }
  }
}

/** What the controller saw, what it was still waiting for, and where a technician would look. */
function lockoutLines(lockout: Lockout, context: TimelineContext): string[] {
  const { cause, step } = lockout;
  const missing = missingAt(lockout, context);
  return [
    message('event.lockout.text', { cause, step }),
    sayWord('cause', cause, '.seen'),
    ...(missing.length === 0
      ? []
      : [message('event.lockout.waiting', { missing: missing.join(', ') })]),
    sayWord('cause', cause, '.look'),
  ];
}

/** The waits of the step that were not met in the last frame before its lockout. */
function missingAt({ t, step }: Lockout, { setup, run }: TimelineContext): string[] {
  const channel = run.channels.findIndex(({ id }) => id === 'logic.inputs');
  const frame = Math.min(Math.floor(t / run.frameS + 1e-6), run.frameCount() - 1);
  if (channel < 0 || frame < run.firstFrame()) return [];
  const word = run.frame(frame)[channel] ?? 0;
  const waits = describeStep(step, setup.plant.variant)?.waitsFor ?? [];
  return INPUTS.flatMap((input) => {
    const wait = waits.find((one) => one.input === input);
    if (wait === undefined || has(word, input) === wait.wanted) return [];
    return [sayWord('input', input, wait.wanted ? '.not' : '')];
  });
}

function actionText(action: TimedAction): string {
  switch (action.type) {
    case 'call-for-heat':
    case 'supply':
    case 'second-setpoint':
    case 'remote-enable':
      return message(`action.${action.type}`, { on: onOff(action.on) });
    case 'reset':
    case 'reset-limits':
    case 'emergency-stop':
      return message(`action.${action.type}`, {
        pressed: message(action.pressed ? 'action.pressed' : 'action.released'),
      });
    case 'set-load':
      return message('action.set-load', { load: percent(action.load) });
    case 'firing':
      return message('action.firing', { mode: action.mode, rate: percent(action.rate) });
    case 'turn-cock':
      return message('action.turn-cock', { cock: action.cock, opening: percent(action.opening) });
    case 'insert-fault':
      return message('action.insert-fault', {
        fault: action.fault,
        severity: severityText(action.fault, action.severity),
      });
    case 'clear-fault':
      return message('action.clear-fault', { fault: action.fault });
    case 'ramp-fault': {
      const { fault, overS } = action;
      const severity = severityText(fault, action.severity);
      return message('action.ramp-fault', { fault, severity, overS });
    }
    case 'intermittent-fault': {
      const { fault, periodS } = action;
      const severity = severityText(fault, action.severity);
      const duty = percent(action.duty);
      return message('action.intermittent-fault', { fault, severity, periodS, duty });
    }
    case 'set-weather': {
      const { temperatureC, weatherPa } = action;
      const humidity = percent(action.relativeHumidity);
      return message('action.set-weather', { temperatureC, weatherPa, humidity });
    }
    case 'set-gas-supply':
    case 'set-mains':
      return message(`action.${action.type}`, { share: percent(action.share) });
    case 'lock':
      return message('action.lock', { point: action.point, on: onOff(action.on) });
    case 'repair':
      return message('action.repair', { part: action.part, way: action.way });
    case 'adjust': {
      const { part, setting, value } = action;
      return message('action.adjust', { part, setting, value });
    }
    case 'jumper':
      return message('action.jumper', { from: action.from, to: action.to, on: onOff(action.on) });
    case 'stroke':
      return action.deg < 0
        ? message('action.stroke.free', { servo: action.servo })
        : message('action.stroke', { servo: action.servo, deg: action.deg });
    case 'check': {
      const places = [action.place, action.other].filter((place) => place !== '');
      return message('action.check', {
        what: action.what,
        places: places.map((place) => `, ${place}`).join(''),
      });
    }
  }
}

function onOff(on: boolean): string {
  return message(on ? 'action.on' : 'action.off');
}

function severityText(fault: string, severity: number): string {
  const unit = FAULTS.find(({ id }) => id === fault)?.severity.unit ?? '1';
  return unit === '1' ? String(severity) : `${severity} ${unit}`;
}

function percent(share: number): string {
  return String(Math.round(share * 1000) / 10);
}
