/** What is recorded of the vessel: only what its kind has. */
import type { VesselKind, VesselState } from '../plant/vessel/index.ts';
import type { QuantityKind, Unit } from '../quantity/index.ts';

export type VesselChannel = readonly [id: string, unit: Unit, kind: QuantityKind];

const OF_STEAM: readonly VesselChannel[] = [
  ['vessel.pressure', 'Pa', 'vessel pressure'],
  ['vessel.temperature', 'K', 'temperature'],
  ['vessel.level', 'm', 'level'],
  ['vessel.gauge-glass', 'm', 'level'],
  ['vessel.steam', 'kg/s', 'steam flow'],
  ['vessel.feed', 'kg/s', 'steam flow'],
  ['vessel.feed-opening', '1', 'share'],
  ['vessel.safety-valve', 'kg/s', 'steam flow'],
];

const OF_HOT_WATER: readonly VesselChannel[] = [
  ['vessel.pressure', 'Pa', 'vessel pressure'],
  ['vessel.temperature', 'K', 'temperature'],
  ['vessel.return-temperature', 'K', 'temperature'],
  ['vessel.circulation', 'kg/s', 'steam flow'],
  ['vessel.heat', 'W', 'power'],
  ['vessel.safety-valve', 'kg/s', 'steam flow'],
];

export function vesselChannels(kind: VesselKind): readonly VesselChannel[] {
  return kind === 'hot water' ? OF_HOT_WATER : OF_STEAM;
}

/** @returns the place after the last number written */
export function writeVessel(frames: Float64Array, at: number, vessel: VesselState): number {
  let k = at;
  frames[k++] = vessel.gaugePa;
  frames[k++] = vessel.waterTemperatureK;
  if (vessel.parameters.kind === 'hot water') {
    frames[k++] = vessel.returnTemperatureK;
    frames[k++] = vessel.circulationKgS;
    frames[k++] = vessel.heatDeliveredW;
  } else {
    frames[k++] = vessel.levelM;
    frames[k++] = vessel.gaugeGlassM;
    frames[k++] = vessel.steamKgS;
    frames[k++] = vessel.feedKgS;
    frames[k++] = vessel.feedOpening;
  }
  frames[k++] = vessel.safetyValveKgS;
  return k;
}
