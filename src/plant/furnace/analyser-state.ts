import { number, type ParameterTable, type Values } from '../../quantity/index.ts';
import { AIR_OXYGEN } from '../combustion/index.ts';
import type { FlueSample } from './efficiency.ts';

export const analyserParameters = {
  probeDelayS: number('s', 0, 60, 'time of the flue gas from the probe to the cells', 4),
  oxygenCellS: number('s', 0.2, 120, 'time constant of the oxygen cell', 5),
  traceCellS: number('s', 0.2, 240, 'time constant of the cells for CO, CO₂ and NO', 12),
  thermocoupleS: number('s', 0.2, 120, 'time constant of the thermocouple in the flue', 6),
  probeFalseAir: number('1', 0, 0.9, 'share of the sample that is air drawn in by leaks', 0),
  shellLossShare: number('1', 0, 0.1, 'heat lost by the shell that efficiency allows for', 0.01),
} as const satisfies ParameterTable;
export type AnalyserParameters = Values<typeof analyserParameters>;

/** A probe in the flue and the cells behind it. */
export interface AnalyserState {
  readonly parameters: AnalyserParameters;
  /** What it shows: dry mole fractions, and the temperature at the probe. */
  oxygen: number;
  carbonDioxide: number;
  carbonMonoxide: number;
  nitricOxide: number;
  temperatureK: number;
  /** By the indirect method, from these readings; 0 without a fire. */
  efficiencyNet: number;
  efficiencyGross: number;
  /** The tube between probe and cells: four readings a place, the newest at `head`. */
  readonly tube: Float64Array;
  head: number;
  readonly sample: FlueSample;
}

/** The tube holds a minute of four gases, a tenth of a second a place. */
export const TUBE_GASES = 4;
export const TUBE_PLACES = 601;
export function createAnalyser(parameters: AnalyserParameters): AnalyserState {
  const tube = new Float64Array(TUBE_GASES * TUBE_PLACES);
  for (let i = 0; i < TUBE_PLACES; i++) tube[TUBE_GASES * i] = AIR_OXYGEN;
  return {
    parameters,
    oxygen: AIR_OXYGEN,
    carbonDioxide: 0,
    carbonMonoxide: 0,
    nitricOxide: 0,
    temperatureK: 0,
    efficiencyNet: 0,
    efficiencyGross: 0,
    tube,
    head: 0,
    sample: { oxygen: AIR_OXYGEN, carbonMonoxide: 0, temperatureK: 0, intakeK: 0 },
  };
}
