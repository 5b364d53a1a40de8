import { name, number, type ParameterTable, type Values } from '../quantity/index.ts';

/**
 * The ignition transformer and what carries its power to the electrode.
 *
 * P = rated · health · (U/Un)² · (1 − tracking) · (1 − cracked): a transformer's output power goes
 * with the square of its volts; what tracks along the lead or through the insulator to earth does
 * not reach the gap. Whether the gap then sparks is the plant's business.
 * Left out: waveform, and that a wide gap draws less than rated power.
 */
export const ignitionTransformerParameters = {
  id: name('name of the transformer'),
  ratedW: number('W', 1, 1000, 'power into the lead at nominal volts'),
  health: number('1', 0, 1, 'share of its power it still makes; 0 dead', 1),
  leadTracking: number('1', 0, 1, 'share lost from the lead to earth', 0),
  insulatorCracked: number('1', 0, 1, 'share lost through the insulator', 0),
} as const satisfies ParameterTable;
export type IgnitionTransformerParameters = Values<typeof ignitionTransformerParameters>;

export interface IgnitionTransformer {
  readonly parameters: IgnitionTransformerParameters;
  fullW: number;
  outputW: number;
  /** Volts at its input over nominal; 0 while it is not fed. */
  fedShare: number;
}

export function createIgnitionTransformer(
  parameters: IgnitionTransformerParameters,
): IgnitionTransformer {
  const transformer: IgnitionTransformer = { parameters, fullW: 0, outputW: 0, fedShare: 0 };
  prepareIgnitionTransformer(transformer);
  return transformer;
}

export function prepareIgnitionTransformer(transformer: IgnitionTransformer): void {
  const p = transformer.parameters;
  transformer.fullW = p.ratedW * p.health * (1 - p.leadTracking) * (1 - p.insulatorCracked);
}

export function stepIgnitionTransformer(
  transformer: IgnitionTransformer,
  energised: boolean,
  voltsShare: number,
): void {
  transformer.fedShare = energised ? voltsShare : 0;
  transformer.outputW = energised ? transformer.fullW * voltsShare * voltsShare : 0;
}
