import type { MeterKind, MeterReading } from '../../engine/index.ts';
import type { Message } from '../message.ts';
import { digitsOf, OVER } from './digits.ts';
import { createFollower, follow, followGain, isStill } from './follower.ts';
import { MULTIMETER } from './instruments.ts';
import { isMissing, nothingShown } from './plain-reading.ts';
import type { ToolReading, ToolRun, ToolState } from './tool-types.ts';
import { rangeOf } from './tools.ts';
import { walkFrames } from './walk-frames.ts';

/** The buzzer's range shows little more than it beeps for. */
const BUZZER_FULL_OHM = 600;

interface MeterRange {
  /** Smallest step of its display. */
  readonly step: number;
  readonly unit: string;
  readonly unitSize: number;
}

/** Finest first; each holds its step times the counts. */
const VOLT_RANGES: readonly MeterRange[] = [1e-3, 1e-2, 0.1, 1].map((step) => ({
  step,
  unit: 'V',
  unitSize: 1,
}));
const OHM_RANGES: readonly MeterRange[] = [
  { step: 0.1, unit: 'Ω', unitSize: 1 },
  { step: 1, unit: 'kΩ', unitSize: 1e3 },
  { step: 10, unit: 'kΩ', unitSize: 1e3 },
  { step: 100, unit: 'kΩ', unitSize: 1e3 },
  { step: 1e3, unit: 'MΩ', unitSize: 1e6 },
  { step: 1e4, unit: 'MΩ', unitSize: 1e6 },
];

/**
 * Volts, ohms, continuity or a clamp's amps, as the wiring network gives them with the meter in it.
 *
 * A frame keeps what is live and what is made, not the volts of each wire, so the reading is that of
 * the moment; until contacts have stood still for the display's time it says that it is settling.
 * A motor's lead is no part of the control circuit: there the clamp follows the recorded current.
 * Left out: the time of the range's own choosing, the offset of a clamp.
 */
export function readMultimeter(run: ToolRun, state: ToolState): ToolReading {
  const kind = rangeOf(state.use) as MeterKind;
  if (state.use.place === 'fan-motor-lead') return readMotorLead(run, state);
  const settled = waitForContacts(run, state);
  const { place, other } = state.use;
  const to = kind === 'amps' ? place : (other ?? '');
  const read = run.meter({ kind, from: place, to });
  if (read === null) return nothingShown(null, '', ['no signal']);
  switch (kind) {
    case 'volts':
      return showVolts(read, settled);
    case 'amps':
      return showAmps(read.value, settled, noteOf(read));
    default:
      return showOhms(read, kind, settled);
  }
}

/** Whether no contact and no volts have moved for as long as the display needs. */
function waitForContacts(run: ToolRun, state: ToolState): boolean {
  const ids = run.channels.flatMap(({ id }) => (id.startsWith('wiring.') ? [id] : []));
  walkFrames(run, state, ids, (frame, places) => {
    state.count += 1;
    places.forEach((place, i) => {
      if (state.words[i] === frame[place]) return;
      state.words[i] = frame[place] as number;
      state.count = 0;
    });
  });
  return state.count * run.frameS >= MULTIMETER.lagS - 1e-9;
}

function showVolts(read: MeterReading, settled: boolean): ToolReading {
  const { alternating, direct } = read;
  const value = alternating >= Math.abs(direct) ? alternating : direct;
  const { shown, unit } = inCounts(value, VOLT_RANGES);
  return {
    value,
    kind: null,
    unit,
    shown,
    flags: settled ? [] : ['settling'],
    steady: settled,
    note: noteOf(read),
  };
}

function showAmps(amps: number, settled: boolean, note: Message): ToolReading {
  const over = amps > MULTIMETER.clampFullA;
  return {
    value: over ? null : amps,
    kind: 'current',
    unit: 'A',
    shown: over ? OVER : digitsOf(amps, MULTIMETER.clampResolutionA),
    flags: [
      ...(over ? (['over range'] as const) : []),
      ...(settled ? [] : (['settling'] as const)),
    ],
    steady: settled && !over,
    note,
  };
}

function showOhms(read: MeterReading, kind: MeterKind, settled: boolean): ToolReading {
  const open = read.overload || (kind === 'continuity' && read.value >= BUZZER_FULL_OHM);
  const { shown, unit } = open ? { shown: OVER, unit: 'Ω' } : inCounts(read.value, OHM_RANGES);
  return {
    value: open ? null : read.value,
    kind: null,
    unit,
    shown,
    flags: [
      ...(read.live ? (['live circuit'] as const) : []),
      ...(settled ? [] : (['settling'] as const)),
    ],
    steady: settled && !read.live,
    ...(read.beeps
      ? { note: { code: 'bench.note.beeps' } }
      : open
        ? { note: { code: 'bench.note.open' } }
        : {}),
    ...(read.live && { warn: { code: 'bench.warn.live-circuit' } }),
  };
}

function readMotorLead(run: ToolRun, state: ToolState): ToolReading {
  const gain = followGain(MULTIMETER.lagS, run.frameS);
  walkFrames(run, state, ['fan.current'], (frame, [place]) => {
    state.followers[0] ??= createFollower();
    const amps = frame[place as number] as number;
    follow(state.followers[0], amps, gain, MULTIMETER.clampResolutionA);
  });
  if (isMissing(state)) return nothingShown('current', 'A', ['no signal']);
  const clamp = state.followers[0] ?? createFollower();
  return showAmps(clamp.value, isStill(clamp), { code: 'bench.note.alternating' });
}

function noteOf({ alternating, direct }: MeterReading): Message {
  const code = alternating >= Math.abs(direct) ? 'alternating' : 'direct';
  return { code: `bench.note.${code}` };
}

/** As the finest range that holds it shows it. */
function inCounts(
  value: number,
  ranges: readonly MeterRange[],
): { readonly shown: string; readonly unit: string } {
  const holds = ({ step }: MeterRange) => Math.abs(value) < (MULTIMETER.counts - 0.5) * step;
  const range = ranges.find(holds) ?? (ranges[ranges.length - 1] as MeterRange);
  const { step, unit, unitSize } = range;
  return { shown: digitsOf(value / unitSize, step / unitSize), unit };
}
