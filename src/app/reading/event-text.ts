import { say, sayWord } from '../../i18n/index.ts';
import type { HistoryEvent } from '../session/protocol.ts';

/** One line of the event list. */
export function eventText(event: HistoryEvent): string {
  switch (event.type) {
    case 'step':
      return sayWord('step', event.step, '.title');
    case 'proved':
      return say('app.event.proved', { what: event.what });
    case 'lost':
      return say('app.event.lost', { what: event.what });
    case 'command':
      return say('app.event.command', { device: event.device, to: event.to });
    case 'lockout':
      return say('app.event.lockout', {
        cause: sayWord('cause', event.cause),
        step: sayWord('step', event.step, '.title').toLowerCase(),
      });
    case 'reset':
      return say('app.event.reset', { count: event.count });
    case 'fault':
      return say(event.on ? 'app.event.fault-on' : 'app.event.fault-off', { fault: event.fault });
    case 'action':
      return actionText(event.action);
    case 'end':
      return say('app.event.end');
  }
}

function actionText(action: Extract<HistoryEvent, { type: 'action' }>['action']): string {
  switch (action.type) {
    case 'call-for-heat':
      return say(action.on ? 'app.act.heat-on' : 'app.act.heat-off');
    case 'reset':
      return say(action.pressed ? 'app.act.reset-pressed' : 'app.act.reset-released');
    case 'emergency-stop':
      return say(action.pressed ? 'app.act.stop-pressed' : 'app.act.stop-released');
    case 'supply':
      return say(action.on ? 'app.act.supply-on' : 'app.act.supply-off');
    case 'reset-limits':
      return say(action.pressed ? 'app.act.limits-pressed' : 'app.act.limits-released');
    case 'second-setpoint':
      return say(action.on ? 'app.act.setpoint-on' : 'app.act.setpoint-off');
    case 'remote-enable':
      return say(action.on ? 'app.act.remote-on' : 'app.act.remote-off');
    case 'set-load':
      return say('app.act.load', { percent: Math.round(action.load * 100) });
    case 'firing':
      return action.mode === 'hand'
        ? say('app.act.firing-hand', { percent: Math.round(action.rate * 100) })
        : say('app.act.firing', { mode: action.mode });
    case 'turn-cock':
      return say('app.act.cock', {
        cock: action.cock,
        percent: Math.round(action.opening * 100),
      });
    case 'insert-fault':
      return say('app.act.fault-in', { fault: action.fault });
    case 'clear-fault':
      return say('app.act.fault-out', { fault: action.fault });
    case 'ramp-fault':
      return say('app.act.fault-ramp', {
        fault: action.fault,
        minutes: Math.round((action.overS / 60) * 10) / 10,
      });
    case 'intermittent-fault':
      return say('app.act.fault-intermittent', { fault: action.fault });
    case 'set-weather':
      return say('app.act.weather', { celsius: Math.round(action.temperatureC) });
    case 'set-gas-supply':
      return say('app.act.gas-supply', { percent: Math.round(action.share * 100) });
    case 'set-mains':
      return say('app.act.mains', { percent: Math.round(action.share * 100) });
    case 'lock':
      return say(action.on ? 'app.act.lock-on' : 'app.act.lock-off', { point: action.point });
    case 'repair':
      return say('app.act.repair', { way: action.way, part: action.part });
    case 'adjust':
      return say('app.act.adjust', { part: action.part, setting: action.setting });
    case 'jumper':
      return say(action.on ? 'app.act.jumper-on' : 'app.act.jumper-off', {
        from: action.from,
        to: action.to,
      });
    case 'stroke':
      return action.deg < 0
        ? say('app.act.stroke-let-go', { servo: action.servo })
        : say('app.act.stroke', { servo: action.servo, deg: Math.round(action.deg) });
    case 'check':
      return say('app.act.check', {
        what: [action.what, action.place, action.other].filter((each) => each !== '').join(', '),
      });
  }
}
