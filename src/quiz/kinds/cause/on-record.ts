/** Where on the record of a start a reading shows. */
import { type Observation, partsOfCheck, STANDING, type Told } from '../../../diagnosis/index.ts';
import type { SeededPlant } from '../../evidence/seeded-plant.ts';
import type { QuizPlant } from '../../item/maker.ts';

/** Frames of a record, s. */
const FRAME_S = 0.1;
const AIR_CHANNELS: Readonly<Record<string, string>> = {
  windbox: 'air.windbox.pressure',
  furnace: 'furnace.pressure',
  flue: 'stack.draught',
};
const ANALYSER = 'flue-gas analyser';

/** When it shows, s: what is read in a step, at its end; null for what is no matter of time. */
export function shownAtS(
  { passed, lockout, run }: Pick<SeededPlant, 'passed' | 'lockout' | 'run'>,
  { check, moment, aspect }: Pick<Told, 'check' | 'moment' | 'aspect'>,
): number | null {
  if (moment === STANDING && aspect === 'ends in') return lockout === null ? run.untilS : lockedS();
  if (partsOfCheck(check).what === 'history') return lockedS();
  const at = passed.find((one) => one.moment === moment);
  return at === undefined ? null : toTenths(Math.max(at.fromS, at.toS - FRAME_S));

  function lockedS(): number | null {
    const at = passed.find((one) => one.moment === 'lockout');
    return at === undefined ? null : toTenths(at.fromS);
  }
}

/** Recorded quantities behind readings, each once. */
export function trendsOf(plant: QuizPlant, told: readonly Told[]): readonly string[] {
  const all = told.map((one) => channelBehind(plant, one));
  return [...new Set(all.filter((one) => one !== null))];
}

function channelBehind({ sound: { plant } }: QuizPlant, { check, aspect }: Told): string | null {
  const { what, place } = partsOfCheck(check);
  switch (what) {
    case 'watch one start':
      return /^input |^duration$|^ends in$/.test(aspect) ? null : aspect;
    case 'manometer': {
      const isGas = plant.gasTrain.nodes.some(({ id }) => id === place);
      return isGas ? `gas.${place}.pressure` : (AIR_CHANNELS[place] ?? null);
    }
    case 'flame-signal meter':
      return 'flame.signal';
    case 'strobe':
      return place === 'fan-shaft' ? 'fan.speed' : null;
    case 'multimeter':
      return 'fan.current';
    case ANALYSER:
      return `analyser.${aspect}`;
    case 'thermometer':
      return place === 'flue' ? 'flue.temperature' : null;
    default:
      return null;
  }
}

/** Keys of observations, for `toldOf`. */
export function keysOf(observations: readonly Observation[]): readonly number[] {
  return observations.map(({ key }) => key);
}

function toTenths(seconds: number): number {
  return Math.round(10 * seconds) / 10;
}
