import { displayed, OVER } from './digits.ts';
import { createFollower, follow, followGain, isStill } from './follower.ts';
import { THERMOMETER } from './instruments.ts';
import { isMissing, nothingShown } from './plain-reading.ts';
import type { ToolFlag, ToolReading, ToolRun, ToolState } from './tool-types.ts';
import { rangeOf } from './tools.ts';
import { walkFrames } from './walk-frames.ts';

const ZERO_C = 273.15;
/** More than this in three seconds is still moving. */
const STEADY_K = 0.5;
const STILL_FRAMES = 30;

/**
 * A thermocouple, in a pocket or pressed on a surface.
 *
 * Equation: it comes to T_room + k·(T − T_room), with one time constant; k is what the stem leads
 *   away, what contact with a pipe loses, what the wall of a flue is cooler than its gas.
 * Left out: radiation, and that k changes with flow.
 */
export function readThermometer(run: ToolRun, state: ToolState): ToolReading {
  const { lagS, resolutionK, fullK } = THERMOMETER;
  const gain = followGain(lagS, run.frameS);
  const roomK = run.setup.plant.ambient.temperatureC + ZERO_C;
  const share = shareOf(state);
  walkFrames(run, state, [channelOf(state.use.place)], (frame, [place]) => {
    state.followers[0] ??= createFollower(roomK);
    const towards = roomK + share * ((frame[place as number] as number) - roomK);
    follow(state.followers[0], towards, gain, STEADY_K);
  });
  if (isMissing(state)) return nothingShown('temperature', '°C', ['no signal']);
  const tip = state.followers[0] ?? createFollower(roomK);
  const still = isStill(tip, STILL_FRAMES);
  const over = tip.value > fullK;
  const flags: ToolFlag[] = [];
  if (over) flags.push('over range');
  if (!still) flags.push('settling');
  return {
    ...displayed(tip.value, 'temperature', resolutionK),
    ...(over && { value: null, shown: OVER }),
    flags,
    steady: still && !over,
    ...(rangeOf(state.use) === 'surface' && { warn: { code: 'bench.warn.surface' } }),
  };
}

function channelOf(place: string): string {
  switch (place) {
    case 'flue':
      return 'flue.temperature';
    case 'return':
      return 'vessel.return-temperature';
    default:
      return 'vessel.temperature';
  }
}

function shareOf({ use }: ToolState): number {
  if (use.place === 'casing') return THERMOMETER.casingShare;
  if (rangeOf(use) === 'pocket') return THERMOMETER.pocketShare;
  return use.place === 'flue' ? THERMOMETER.flueWallShare : THERMOMETER.pipeShare;
}
