/** What the instruments of the vessel show, which need not be what is so. */
import type { FieldOutputs } from '../field/index.ts';
import type { VesselKind } from '../plant/vessel/index.ts';
import type { VesselChannel } from './vessel-channels.ts';

const ZERO_C = 273.15;

const OF_STEAM: readonly VesselChannel[] = [
  ['vessel.pressure-shown', 'Pa', 'vessel pressure'],
  ['vessel.level-shown', 'm', 'level'],
  ['vessel.feed-demand', '1', 'share'],
];

const OF_HOT_WATER: readonly VesselChannel[] = [
  ['vessel.pressure-shown', 'Pa', 'vessel pressure'],
  ['vessel.temperature-shown', 'K', 'temperature'],
];

export function instrumentChannels(kind: VesselKind): readonly VesselChannel[] {
  return kind === 'hot water' ? OF_HOT_WATER : OF_STEAM;
}

/** @returns the place after the last number written */
export function writeInstruments(
  frames: Float64Array,
  at: number,
  kind: VesselKind,
  outputs: FieldOutputs,
): number {
  let k = at;
  frames[k++] = outputs.vesselPa;
  if (kind === 'hot water') {
    frames[k++] = outputs.waterC + ZERO_C;
  } else {
    frames[k++] = outputs.levelM;
    frames[k++] = outputs.feedDemand;
  }
  return k;
}
