/** What the engine tells the field about the plant, each step; gauge pressures. */
export interface FieldReadings {
  regulatedPa: number;
  interspacePa: number;
  manifoldPa: number;
  windboxPa: number;
  headDifferentialPa: number;
  furnacePa: number;
  vesselPa: number;
  vesselLevelM: number;
  /** Boiling water, or hot water that leaves the boiler. */
  vesselK: number;
  /** Hot water that comes back. */
  returnK: number;
  steamKgS: number;
  upstreamStem: number;
  downstreamStem: number;
  pilotIntensity: number;
  mainIntensity: number;
  mainLift: number;
  sparkW: number;
  furnaceK: number;
  /** What the fan asks for at its shaft, N·m. */
  loadTorqueNm: number;
}

/** A plant at rest, cold and without pressure. */
export function createReadings(): FieldReadings {
  return {
    regulatedPa: 0,
    interspacePa: 0,
    manifoldPa: 0,
    windboxPa: 0,
    headDifferentialPa: 0,
    furnacePa: 0,
    vesselPa: 0,
    vesselLevelM: 0,
    vesselK: 293.15,
    returnK: 293.15,
    steamKgS: 0,
    upstreamStem: 0,
    downstreamStem: 0,
    pilotIntensity: 0,
    mainIntensity: 0,
    mainLift: 0,
    sparkW: 0,
    furnaceK: 293.15,
    loadTorqueNm: 0,
  };
}

/** Places a pressure tube or a transmitter may go to. */
export const SIGNALS = [
  'regulated gas',
  'interspace',
  'manifold gas',
  'windbox',
  'windbox-furnace differential',
  'burner-head differential',
  'furnace',
  'vessel',
] as const;
export type Signal = (typeof SIGNALS)[number];

/** The place as a number, for the step. */
export function signalIndex(signal: Signal): number {
  return SIGNALS.indexOf(signal);
}

/** @param index place in SIGNALS */
export function readSignal(readings: FieldReadings, index: number): number {
  switch (index) {
    case 0:
      return readings.regulatedPa;
    case 1:
      return readings.interspacePa;
    case 2:
      return readings.manifoldPa;
    case 3:
      return readings.windboxPa;
    case 4:
      return readings.windboxPa - readings.furnacePa;
    case 5:
      return readings.headDifferentialPa;
    case 6:
      return readings.furnacePa;
    default:
      return readings.vesselPa;
  }
}
