import { nextNormal, type RandomState } from '../numeric/index.ts';
import { type AnalogueInput, arrive, createAnalogueInput } from './analogue-input.ts';
import { readBandRadiance } from './black-body-band.ts';
import {
  aimRod,
  type IonisationSensorParameters,
  ionisationMicroamps,
  type RodSight,
} from './ionisation-sensor.ts';
import { aimIr, type IrSensorParameters, type IrSight, irMicroamps } from './ir-sensor.ts';
import { followWithLag, lagGain } from './lag.ts';
import type { FieldReadings } from './signals.ts';
import { aimUv, type UvSensorParameters, type UvSight, uvMicroamps } from './uv-sensor.ts';

export type FlameSensorParameters =
  | UvSensorParameters
  | IrSensorParameters
  | IonisationSensorParameters;

/** A flame sensor and its amplifier's smoothing: light or current in, microamps out. */
export interface FlameSensor {
  readonly parameters: FlameSensorParameters;
  readonly random: RandomState;
  readonly input: AnalogueInput;
  sight: UvSight | IrSight | RodSight;
  /** Of a black body as hot as the furnace, in the band of an infrared cell, W/(m²·sr). */
  furnaceRadiance: number;
  gain: number;
  deviationMicroamps: number;
  pilotIntensity: number;
  mainIntensity: number;
  mainLift: number;
  sparkW: number;
  /** The same view as before gives this. */
  seenMicroamps: number;
  smoothMicroamps: number;
  noiseMicroamps: number;
  microamps: number;
  /** Of the amplifier; without it nothing stands on the wire. */
  powered: boolean;
}

export function createFlameSensor(
  parameters: FlameSensorParameters,
  random: RandomState,
  stepS: number,
): FlameSensor {
  const sensor: FlameSensor = {
    parameters,
    random,
    input: createAnalogueInput(),
    sight: aim(parameters),
    furnaceRadiance: 0,
    gain: lagGain(parameters.responseS, stepS),
    deviationMicroamps: parameters.noiseMicroamps,
    pilotIntensity: 0,
    mainIntensity: 0,
    mainLift: 0,
    sparkW: 0,
    seenMicroamps: 0,
    smoothMicroamps: 0,
    noiseMicroamps: 0,
    microamps: 0,
    powered: false,
  };
  look(sensor);
  return sensor;
}

export function prepareFlameSensor(sensor: FlameSensor, stepS: number): void {
  const p = sensor.parameters;
  sensor.gain = lagGain(p.responseS, stepS);
  sensor.deviationMicroamps = p.noiseMicroamps;
  sensor.sight = aim(p);
  look(sensor);
}

/** Ten times a second, whatever the step: the amplifier's noise, and the slow heat of the walls. */
export function refreshFlameSensor(sensor: FlameSensor, furnaceK: number): void {
  const { deviationMicroamps } = sensor;
  sensor.noiseMicroamps =
    deviationMicroamps > 0 ? deviationMicroamps * nextNormal(sensor.random) : 0;
  if (sensor.sight.kind === 'ir') {
    sensor.furnaceRadiance = readBandRadiance(furnaceK);
    look(sensor);
  }
}

export function stepFlameSensor(
  sensor: FlameSensor,
  readings: FieldReadings,
  powered: boolean,
): void {
  const { pilotIntensity, mainIntensity, mainLift, sparkW } = readings;
  sensor.powered = powered;
  if (
    mainIntensity !== sensor.mainIntensity ||
    pilotIntensity !== sensor.pilotIntensity ||
    mainLift !== sensor.mainLift ||
    sparkW !== sensor.sparkW
  ) {
    sensor.pilotIntensity = pilotIntensity;
    sensor.mainIntensity = mainIntensity;
    sensor.mainLift = mainLift;
    sensor.sparkW = sparkW;
    look(sensor);
  }
  const seen = powered ? sensor.seenMicroamps : 0;
  if (seen !== sensor.smoothMicroamps) {
    sensor.smoothMicroamps = followWithLag(sensor.smoothMicroamps, seen, sensor.gain);
  }
  sensor.microamps = powered
    ? Math.max(0, arrive(sensor.input, sensor.smoothMicroamps + sensor.noiseMicroamps))
    : 0;
}

function aim(p: FlameSensorParameters): UvSight | IrSight | RodSight {
  switch (p.kind) {
    case 'uv':
      return aimUv(p);
    case 'ir':
      return aimIr(p);
    case 'ionisation':
      return aimRod(p);
  }
}

function look(sensor: FlameSensor): void {
  const { sight, pilotIntensity, mainIntensity, mainLift, sparkW } = sensor;
  switch (sight.kind) {
    case 'uv':
      sensor.seenMicroamps = uvMicroamps(sight, pilotIntensity, mainIntensity, mainLift, sparkW);
      break;
    case 'ir':
      sensor.seenMicroamps = irMicroamps(
        sight,
        pilotIntensity,
        mainIntensity,
        mainLift,
        sensor.furnaceRadiance,
      );
      break;
    case 'ionisation':
      sensor.seenMicroamps = ionisationMicroamps(sight, pilotIntensity, mainIntensity, mainLift);
  }
}
