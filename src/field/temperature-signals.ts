import type { FieldReadings } from './signals.ts';

/** Places a temperature sensor may stand in. */
export const TEMPERATURES = ['vessel temperature', 'return temperature'] as const;
export type TemperatureSignal = (typeof TEMPERATURES)[number];

export const ZERO_CELSIUS_K = 273.15;

/** The place as a number, for the step. */
export function temperatureIndex(signal: TemperatureSignal): number {
  return TEMPERATURES.indexOf(signal);
}

/** @param index place in TEMPERATURES; °C, as every dial in a boiler house */
export function readTemperature(readings: FieldReadings, index: number): number {
  return (index === 0 ? readings.vesselK : readings.returnK) - ZERO_CELSIUS_K;
}
