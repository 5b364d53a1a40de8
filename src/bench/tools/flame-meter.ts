import { digitsOf, displayed, OVER } from './digits.ts';
import { createFollower, follow, followGain, isStill } from './follower.ts';
import { FLAME_METER } from './instruments.ts';
import { isMissing, nothingShown } from './plain-reading.ts';
import type { ReadingLine, ToolReading, ToolRun, ToolState } from './tool-types.ts';
import { walkFrames } from './walk-frames.ts';

/** A flickering flame never stands still to a digit; within this it can be read, µA. */
const STEADY_MICROAMPS = 0.3;

/**
 * Current in series with the flame sensor, smoothed, with the least and the most since it was
 * connected. Its own resistance is nothing beside the megohms of a flame: left out.
 */
export function readFlameMeter(run: ToolRun, state: ToolState): ToolReading {
  const { lagS, resolutionMicroamps, fullMicroamps } = FLAME_METER;
  const gain = followGain(lagS, run.frameS);
  walkFrames(run, state, ['flame.signal'], (frame, [place]) => {
    state.followers[0] ??= createFollower();
    follow(state.followers[0], frame[place as number] as number, gain, STEADY_MICROAMPS);
  });
  if (isMissing(state)) return nothingShown('flame current', 'µA', ['no signal']);
  const { value, least, most } = state.followers[0] ?? createFollower();
  const still = state.followers[0] !== undefined && isStill(state.followers[0]);
  const over = value > fullMicroamps;
  return {
    ...displayed(value, 'flame current', resolutionMicroamps),
    ...(over && { value: null, shown: OVER }),
    flags: [...(over ? (['over range'] as const) : []), ...(still ? [] : (['settling'] as const))],
    steady: still && !over,
    lines: [hold('least', least), hold('most', most)],
  };
}

function hold(which: 'least' | 'most', value: number): ReadingLine {
  const shown = digitsOf(value, FLAME_METER.resolutionMicroamps);
  return { what: { code: `bench.line.${which}` }, value, kind: 'flame current', unit: 'µA', shown };
}
