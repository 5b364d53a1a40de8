import { nextNormal, type RandomState } from '../numeric/index.ts';
import { choice, name, number, type ParameterTable, type Values } from '../quantity/index.ts';
import { type AnalogueInput, arrive, createAnalogueInput } from './analogue-input.ts';
import { followWithLag, lagGain } from './lag.ts';

/**
 * A capacitance level probe: an insulated rod down into the water. The water is the outer plate, so
 * the capacitance grows in proportion to the wetted length, and the reading with it.
 *
 * Equation: w = (level − low) / (high − low); a film on the bare part feels like water by its share f;
 * leaking insulation draws current beside the capacitance, share i of the whole:
 *   reading = low + (high − low) · min(1, w + f·(1 − w) + i) + offset.
 * So a film and a leak both show too much water, and most of all where there is least.
 * Valid for: conductive boiler water, which makes the outer plate; steam counts as nothing.
 * Left out: change of the insulation's permittivity with temperature, conductivity of pure water.
 * Source: capacitance of a coaxial cylinder, any electricity text: proportional to its length.
 */
export const levelProbeParameters = {
  id: name('name of the probe'),
  lowM: number('m', -3, 3, 'level at the lower end of its range, from normal'),
  highM: number('m', -3, 3, 'level at the upper end of its range, from normal'),
  lagS: number('s', 0, 60, 'lag of its tube and electronics', 2),
  fouling: number('1', 0, 1, 'share of the bare rod that a film makes feel like water', 0),
  insulationLeak: number('1', 0, 1, 'current through bad insulation as a share of the range', 0),
  offsetM: number('m', -3, 3, 'reads this much too high', 0),
  noiseM: number('m', 0, 1, 'scatter, one deviation', 0),
  signal: choice(['sound', 'lost'], 'circuit of the signal', 'sound'),
} as const satisfies ParameterTable;
export type LevelProbeParameters = Values<typeof levelProbeParameters>;

export interface LevelProbe {
  readonly parameters: LevelProbeParameters;
  readonly random: RandomState;
  readonly input: AnalogueInput;
  /** Nothing before the first look. */
  sensedM: number;
  readingM: number;
  gain: number;
}

export function createLevelProbe(
  parameters: LevelProbeParameters,
  random: RandomState,
  stepS: number,
): LevelProbe {
  const probe: LevelProbe = {
    parameters,
    random,
    input: createAnalogueInput(),
    sensedM: Number.NaN,
    readingM: 0,
    gain: 1,
  };
  prepareLevelProbe(probe, stepS);
  return probe;
}

export function prepareLevelProbe(probe: LevelProbe, stepS: number): void {
  probe.gain = lagGain(probe.parameters.lagS, stepS);
}

/** Ten times a second; without noise no random number is drawn. */
export function stepLevelProbe(probe: LevelProbe, levelM: number): void {
  const p = probe.parameters;
  const spanM = p.highM - p.lowM;
  const wetted = Math.max(0, Math.min(1, (levelM - p.lowM) / spanM));
  const felt = Math.min(1, wetted + p.fouling * (1 - wetted) + p.insulationLeak);
  const feltM = p.lowM + spanM * felt + p.offsetM;
  probe.sensedM = Number.isNaN(probe.sensedM)
    ? feltM
    : followWithLag(probe.sensedM, feltM, probe.gain);
  const noiseM = p.noiseM > 0 ? p.noiseM * nextNormal(probe.random) : 0;
  probe.readingM =
    p.signal === 'lost'
      ? p.lowM - 0.25 * spanM
      : arrive(probe.input, Math.max(p.lowM, Math.min(p.highM, probe.sensedM + noiseM)));
}
