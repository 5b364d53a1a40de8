import { nextNormal, type RandomState } from '../numeric/index.ts';
import { choice, name, number, type ParameterTable, type Values } from '../quantity/index.ts';
import { type AnalogueInput, arrive, createAnalogueInput } from './analogue-input.ts';
import { followWithLag, lagGain } from './lag.ts';
import { TEMPERATURES, temperatureIndex } from './temperature-signals.ts';

/**
 * A temperature transmitter: what it reads follows the water through pocket and element, plus
 * offset and scatter, held to its range. A lost signal reads a quarter of the span below the range,
 * as a dead 4–20 mA loop does (live zero, IEC 60381-1).
 */
export const thermometerParameters = {
  id: name('name of the transmitter'),
  senses: choice(TEMPERATURES, 'where its pocket is'),
  lowC: number('°C', -50, 300, 'lower end of the range', 0),
  highC: number('°C', -50, 300, 'upper end of the range'),
  lagS: number('s', 0, 3600, 'lag of element and pocket', 8),
  offsetK: number('K', -100, 100, 'reads this much too high', 0),
  noiseK: number('K', 0, 20, 'scatter, one deviation', 0),
  signal: choice(['sound', 'lost'], 'circuit of the signal', 'sound'),
} as const satisfies ParameterTable;
export type ThermometerParameters = Values<typeof thermometerParameters>;

export interface Thermometer {
  readonly parameters: ThermometerParameters;
  readonly random: RandomState;
  readonly input: AnalogueInput;
  readonly signal: number;
  /** Nothing before the first look. */
  sensedC: number;
  readingC: number;
  gain: number;
}

export function createThermometer(
  parameters: ThermometerParameters,
  random: RandomState,
  stepS: number,
): Thermometer {
  const thermometer: Thermometer = {
    parameters,
    random,
    input: createAnalogueInput(),
    signal: temperatureIndex(parameters.senses),
    sensedC: Number.NaN,
    readingC: 0,
    gain: 1,
  };
  prepareThermometer(thermometer, stepS);
  return thermometer;
}

export function prepareThermometer(thermometer: Thermometer, stepS: number): void {
  thermometer.gain = lagGain(thermometer.parameters.lagS, stepS);
}

/** Ten times a second; without noise no random number is drawn. */
export function stepThermometer(thermometer: Thermometer, waterC: number): void {
  const p = thermometer.parameters;
  const { sensedC } = thermometer;
  thermometer.sensedC = Number.isNaN(sensedC)
    ? waterC
    : followWithLag(sensedC, waterC, thermometer.gain);
  const noiseK = p.noiseK > 0 ? p.noiseK * nextNormal(thermometer.random) : 0;
  thermometer.readingC =
    p.signal === 'lost'
      ? p.lowC - 0.25 * (p.highC - p.lowC)
      : arrive(
          thermometer.input,
          Math.max(p.lowC, Math.min(p.highC, thermometer.sensedC + p.offsetK + noiseK)),
        );
}
