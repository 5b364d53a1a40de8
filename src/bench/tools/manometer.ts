import { createRandom, exactExp, nextUniform } from '../../numeric/index.ts';
import { displayed, OVER } from './digits.ts';
import { createFollower, follow, followGain, isStill } from './follower.ts';
import {
  MANOMETER_RANGES,
  type ManometerRange,
  ZERO_DRIFT_S,
  ZERO_GOOD_FOR_S,
} from './instruments.ts';
import { isMissing, nothingShown } from './plain-reading.ts';
import type { Follower, ToolFlag, ToolReading, ToolRun, ToolState } from './tool-types.ts';
import { rangeOf } from './tools.ts';
import { connectedS, walkFrames } from './walk-frames.ts';

/** How long the column must stand, frames. */
const STILL_FRAMES = 10;

/**
 * Pressure at one hose against the room, or between two hoses.
 *
 * Equation: the hose is a first-order lag; the zero, taken on connecting, wanders towards an amount
 *   of the instrument's own within its bounds, z = z∞·(1 − e^(−t/τ)). Past its overload the sensor
 *   keeps a shift until it is connected, and so zeroed, anew.
 * Left out: the volume of the hose, which is nothing to a gas train; the meter changes no pressure.
 */
export function readManometer(run: ToolRun, state: ToolState): ToolReading {
  const { use } = state;
  const range: ManometerRange =
    MANOMETER_RANGES[rangeOf(use) as keyof typeof MANOMETER_RANGES] ?? MANOMETER_RANGES.mid;
  const gain = followGain(range.hoseLagS, run.frameS);
  const channels = [channelOf(use.place), channelOf(use.other ?? '')].filter((id) => id !== '');
  state.followers[0] ??= createFollower();
  walkFrames(run, state, channels, (frame, [one, other]) => {
    const hose = followerOf(state);
    const against = other === undefined ? 0 : (frame[other] as number);
    const signed = (frame[one as number] as number) * signOf(use.place);
    follow(hose, signed - against * signOf(use.other ?? ''), gain, range.resolutionPa);
    if (Math.abs(hose.value) > range.overloadPa) state.overloaded = true;
  });
  if (isMissing(state)) return nothingShown('gas pressure', 'mbar', ['no signal']);

  const t = connectedS(state);
  const hose = followerOf(state);
  const pa = hose.value + zeroErrorPa(run, state, range, t);
  const still = isStill(hose, STILL_FRAMES);
  const flags: ToolFlag[] = [];
  if (Math.abs(pa) > range.fullPa) flags.push('over range');
  if (state.overloaded) flags.push('overloaded');
  if (state.overloaded || t > ZERO_GOOD_FOR_S) flags.push('needs zero');
  if (!still) flags.push('settling');
  const line = displayed(pa, 'gas pressure', range.resolutionPa);
  const over = flags.includes('over range');
  return {
    ...line,
    ...(over && { value: null, shown: OVER }),
    flags,
    steady: still && !over,
    ...(over && { warn: { code: 'bench.warn.over-range' } }),
  };
}

function channelOf(place: string): string {
  switch (place) {
    case '':
      return '';
    case 'windbox':
      return 'air.windbox.pressure';
    case 'furnace':
      return 'furnace.pressure';
    case 'flue':
      return 'stack.draught';
    default:
      return `gas.${place}.pressure`;
  }
}

/** A draught is counted as suction; a manometer shows suction below zero. */
function signOf(place: string): number {
  return place === 'flue' ? -1 : 1;
}

function zeroErrorPa(run: ToolRun, state: ToolState, range: ManometerRange, t: number): number {
  const stream = `zero of the manometer at ${state.use.place}, ${state.sinceS} s`;
  const share = 2 * nextUniform(createRandom(run.setup.seed, stream)) - 1;
  const drift = range.zeroDriftPa * share * (1 - exactExp(-t / ZERO_DRIFT_S));
  return drift + (state.overloaded ? range.overloadShiftPa : 0);
}

function followerOf(state: ToolState): Follower {
  state.followers[0] ??= createFollower();
  return state.followers[0];
}
