import { type Channel, indexChannels, readAt } from '../channels.ts';

/** How loud the sounds are that tell of something wrong, 0…1. */
export interface SignLevels {
  squeal: number;
  hunting: number;
  hiss: number;
}

/** Hears them in the frames: slip of a belt under load, swings of an outlet, gas through a vent. */
export interface EvidenceEar {
  hear(frame: Float64Array, tS: number): Readonly<SignLevels>;
}

const FULL_RPM = 1760;
const SQUEALS_FROM_RPM = 60;
/** Below this a belt creeps, as every belt does, and is quiet. */
const QUIET_SLIP = 0.015;
const SCREAMS_SLIP = 0.25;
const VENT_LOUD_KG_S = 2e-4;
/** Pressure is kept for so many tenths of a second, and hunts when it turns so often in them. */
const KEPT = 40;
const KEPT_EVERY_S = 0.09;
const TURNS = 4;
const SWING_SHARE = 0.01;
const LOUD_SHARE = 0.2;
const LEAST_PA = 200;
const JUMP_S = 1.5;

export function createEvidenceEar(channels: readonly Channel[]): EvidenceEar {
  const index = indexChannels(channels);
  const speed = index.indexOf('fan.speed');
  const slip = index.indexOf('fan.belt-slip');
  const outlet = index.indexOf('gas.regulated.pressure');
  const vents = channels
    .filter(({ id }) => /^gas\..*vent.*\.flow$/.test(id))
    .map(({ id }) => index.indexOf(id));
  const levels: SignLevels = { squeal: 0, hunting: 0, hiss: 0 };
  const kept: number[] = [];
  let lastS: number | null = null;

  return {
    hear(frame, tS) {
      levels.squeal = squealOf(readAt(frame, speed), readAt(frame, slip));
      let ventKgS = 0;
      for (const place of vents) ventKgS = Math.max(ventKgS, Math.abs(readAt(frame, place)));
      levels.hiss = Math.min(1, ventKgS / VENT_LOUD_KG_S);
      if (lastS === null || tS < lastS || tS - lastS > JUMP_S) kept.length = 0;
      if (lastS === null || kept.length === 0 || tS - lastS >= KEPT_EVERY_S) {
        lastS = tS;
        kept.push(readAt(frame, outlet));
        if (kept.length > KEPT) kept.shift();
        levels.hunting = huntOf(kept);
      }
      return levels;
    },
  };
}

function squealOf(rpm: number, slip: number): number {
  if (Math.abs(rpm) < SQUEALS_FROM_RPM || slip < QUIET_SLIP) return 0;
  const speed = Math.min(1, (2 * Math.abs(rpm)) / FULL_RPM);
  return Math.min(1, (speed * slip) / SCREAMS_SLIP);
}

/** Turns of a pressure that goes up and down by itself, not one fall and rise of a valve opening. */
function huntOf(values: readonly number[]): number {
  if (values.length < KEPT) return 0;
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  if (mean < LEAST_PA) return 0;
  let turns = 0;
  let rising: boolean | null = null;
  let turnedAt = values[0] as number;
  for (const value of values) {
    const isUp = value > turnedAt;
    if (rising === isUp) turnedAt = value;
    else if (Math.abs(value - turnedAt) >= SWING_SHARE * mean) {
      if (rising !== null) turns += 1;
      rising = isUp;
      turnedAt = value;
    }
  }
  if (turns < TURNS) return 0;
  return Math.min(1, (Math.max(...values) - Math.min(...values)) / (LOUD_SHARE * mean));
}
