import {
  createField,
  createReadings,
  driveField,
  type Field,
  type FieldParameters,
  type FieldReadings,
  INPUT_BITS,
  readField,
  settleField,
} from '../../src/field/index.ts';

export type InputName = keyof typeof INPUT_BITS;
const USUAL_STEP_S = 0.01;

/** A field before a plant that does at once what it should: no physics, only ideal answers. */
export interface IdealPlant {
  readonly field: Field;
  readonly readings: FieldReadings;
  readonly stepS: number;
  word: number;
  timeS: number;
}

export function createIdealPlant(
  parameters: FieldParameters,
  seed = 1,
  stepS = USUAL_STEP_S,
): IdealPlant {
  const field = createField(parameters, seed);
  const readings = createReadings();
  readings.regulatedPa = 10000;
  readings.vesselPa = 1.1e6;
  const word = settleField(field, readings);
  return { field, readings, stepS, word, timeS: 0 };
}

export function runPlant(
  plant: IdealPlant,
  commands: number,
  target: number,
  seconds: number,
  onStep?: (plant: IdealPlant) => void,
): void {
  const { field, readings, stepS } = plant;
  const { outputs } = field;
  for (let i = 0; i < Math.round(seconds / stepS); i++) {
    const speed = outputs.fanRpm / 1760;
    readings.loadTorqueNm = 70 * speed * speed;
    driveField(field, commands, target, readings, stepS);
    const air = 1400 * speed * speed * (outputs.damperBladeDeg / 90);
    readings.windboxPa = air;
    readings.headDifferentialPa = air;
    readings.upstreamStem = outputs.upstreamValve ? 1 : 0;
    readings.downstreamStem = outputs.downstreamValve ? 1 : 0;
    if (outputs.ventValve) readings.interspacePa = 0;
    if (outputs.upstreamValve) readings.interspacePa = readings.regulatedPa;
    readings.sparkW = outputs.sparkW;
    readings.pilotIntensity = outputs.pilotValve ? 1 : 0;
    readings.mainIntensity = outputs.upstreamValve && outputs.downstreamValve ? 1 : 0;
    plant.word = readField(field, readings, stepS);
    plant.timeS += stepS;
    onStep?.(plant);
  }
}

export function isMade(plant: IdealPlant, input: InputName): boolean {
  return (plant.word & INPUT_BITS[input]) !== 0;
}

export function madeInputs(plant: IdealPlant): InputName[] {
  return (Object.keys(INPUT_BITS) as InputName[]).filter((input) => isMade(plant, input));
}
