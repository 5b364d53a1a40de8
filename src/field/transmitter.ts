import { nextNormal, type RandomState } from '../numeric/index.ts';
import { choice, name, number, type ParameterTable, type Values } from '../quantity/index.ts';
import { type AnalogueInput, arrive, createAnalogueInput } from './analogue-input.ts';
import { followWithLag, lagGain } from './lag.ts';
import { SIGNALS, signalIndex } from './signals.ts';

/**
 * A pressure transmitter: what it reads follows the pressure through the impulse line and its own
 * lag, plus drift and noise, held to its range. A lost signal reads a quarter of the span below
 * the range, as a dead 4–20 mA loop does (live zero, IEC 60381-1).
 */
export const transmitterParameters = {
  id: name('name of the transmitter'),
  senses: choice(SIGNALS, 'where its impulse line goes'),
  lowPa: number('Pa', -1e5, 1e7, 'lower end of the range', 0),
  highPa: number('Pa', -1e5, 1e7, 'upper end of the range'),
  lagS: number('s', 0, 10, 'lag of the transmitter', 0.1),
  lineLagS: number('s', 0, 36000, 'lag of the impulse line; hours when blocked', 0),
  offsetPa: number('Pa', -2e6, 2e6, 'reads this much too high', 0),
  noisePa: number('Pa', 0, 1e5, 'scatter, one deviation', 0),
  signal: choice(['sound', 'lost'], 'circuit of the signal', 'sound'),
} as const satisfies ParameterTable;
export type TransmitterParameters = Values<typeof transmitterParameters>;

export interface Transmitter {
  readonly parameters: TransmitterParameters;
  readonly random: RandomState;
  readonly signal: number;
  readonly input: AnalogueInput;
  sensedPa: number;
  noisePa: number;
  readingPa: number;
  gain: number;
  lowPa: number;
  highPa: number;
  offsetPa: number;
  deviationPa: number;
  errorPa: number;
  lost: boolean;
}

export function createTransmitter(
  parameters: TransmitterParameters,
  random: RandomState,
  stepS: number,
): Transmitter {
  const transmitter: Transmitter = {
    parameters,
    random,
    signal: signalIndex(parameters.senses),
    input: createAnalogueInput(),
    sensedPa: 0,
    noisePa: 0,
    readingPa: 0,
    gain: 1,
    lowPa: 0,
    highPa: 1,
    offsetPa: 0,
    deviationPa: 0,
    errorPa: 0,
    lost: false,
  };
  prepareTransmitter(transmitter, stepS);
  return transmitter;
}

export function prepareTransmitter(transmitter: Transmitter, stepS: number): void {
  const p = transmitter.parameters;
  transmitter.gain = lagGain(p.lagS + p.lineLagS, stepS);
  transmitter.lowPa = p.lowPa;
  transmitter.highPa = p.highPa;
  transmitter.lost = p.signal === 'lost';
  transmitter.offsetPa = p.offsetPa;
  transmitter.deviationPa = p.noisePa;
  transmitter.errorPa = p.offsetPa + transmitter.noisePa;
}

/** Ten times a second; without noise no random number is drawn. */
export function refreshTransmitterNoise(transmitter: Transmitter): void {
  const { deviationPa } = transmitter;
  transmitter.noisePa = deviationPa > 0 ? deviationPa * nextNormal(transmitter.random) : 0;
  transmitter.errorPa = transmitter.offsetPa + transmitter.noisePa;
}

export function stepTransmitter(transmitter: Transmitter, pressurePa: number): void {
  const sensedPa = followWithLag(transmitter.sensedPa, pressurePa, transmitter.gain);
  transmitter.sensedPa = sensedPa;
  const { lowPa, highPa } = transmitter;
  transmitter.readingPa = transmitter.lost
    ? lowPa - 0.25 * (highPa - lowPa)
    : arrive(transmitter.input, Math.max(lowPa, Math.min(highPa, sensedPa + transmitter.errorPa)));
}
