import type { PlantFile } from '../../engine/index.ts';
import { displayed } from './digits.ts';
import { createFollower, follow, followGain, isStill } from './follower.ts';
import { STROBE, STROBE_RANGES, type StrobeRange } from './instruments.ts';
import { isMissing, nothingShown } from './plain-reading.ts';
import type { ToolFlag, ToolReading, ToolRun, ToolState } from './tool-types.ts';
import { rangeOf } from './tools.ts';
import { walkFrames } from './walk-frames.ts';

const OF_FAN = ['fan.speed'];
const OF_MOTOR = ['fan.speed', 'fan.belt-slip', 'fan.frequency'];

/**
 * Shaft speed by a flash that makes a mark on the shaft stand still.
 *
 * One mark stands still at the speed itself and at a half, a third … of it, so a lamp that does not
 * flash fast enough finds a part of the speed and nothing on it says so. One that does not flash
 * slowly enough finds nothing. It cannot tell which way the shaft turns.
 * Motor shaft of a belted fan: n/(i·(1 − s)); where the belt has let go, the speed of its field.
 */
export function readStrobe(run: ToolRun, state: ToolState): ToolReading {
  const range: StrobeRange =
    STROBE_RANGES[rangeOf(state.use) as keyof typeof STROBE_RANGES] ?? STROBE_RANGES.high;
  const gain = followGain(STROBE.tuneS, run.frameS);
  const { plant } = run.setup;
  const ofMotor = state.use.place === 'motor-shaft';
  walkFrames(run, state, ofMotor ? OF_MOTOR : OF_FAN, (frame, [speed, slip, frequency]) => {
    state.followers[0] ??= createFollower();
    const fanRpm = Math.abs(frame[speed as number] as number);
    const rpm = ofMotor
      ? motorRpm(plant, fanRpm, frame[slip as number] ?? 0, frame[frequency as number] as number)
      : fanRpm;
    follow(state.followers[0], rpm, gain, STROBE.creepRpm);
  });
  if (isMissing(state)) return nothingShown('shaft speed', 'rpm', ['no signal']);
  const shaft = state.followers[0] ?? createFollower();
  const still = isStill(shaft);
  const parts = Math.max(1, Math.ceil(shaft.value / range.mostRpm));
  const flash = shaft.value / parts;
  const warn = { code: 'bench.warn.strobe' };
  if (flash < range.leastRpm) {
    const flags: ToolFlag[] = still ? ['no signal'] : ['no signal', 'settling'];
    return { ...nothingShown('shaft speed', 'rpm', flags), steady: still, warn };
  }
  return {
    ...displayed(flash, 'shaft speed', STROBE.resolutionRpm),
    flags: still ? [] : ['settling'],
    steady: still,
    warn,
  };
}

function motorRpm(plant: PlantFile, fanRpm: number, slip: number, fieldHz: number): number {
  const drive = plant.field.drives[0];
  if (drive === undefined) return 0;
  return slip < 0.999 ? fanRpm / (drive.beltRatio * (1 - slip)) : (120 * fieldHz) / drive.poles;
}
