import type { QuantityKind } from '../../quantity/index.ts';
import type { Facts, Reading, StepFacts } from '../session/protocol.ts';

export interface WaitAt {
  readonly input: string;
  /** Whether the step wants the terminal made (true) or open (false). */
  readonly wanted: boolean;
  readonly met: boolean;
  readonly value: number | null;
  readonly limit: number | null;
  readonly kind: QuantityKind;
  readonly sense: Reading['sense'];
}

/** The permissives of a step that the plant has, at a frame, each with the reading behind it. */
export function waitsAt(facts: Facts, step: StepFacts | null, frame: Float64Array): WaitAt[] {
  if (step === null) return [];
  const word = readChannel(facts, frame, 'logic.inputs') ?? 0;
  const fitted = step.waits.filter(({ input }) => facts.plantInputs.includes(input));
  return fitted.map(({ input, wanted }) => {
    const made = (word & (1 << facts.inputs.indexOf(input))) !== 0;
    const reading = facts.readings[input];
    return {
      input,
      wanted,
      met: made === wanted,
      value: reading?.channel ? readChannel(facts, frame, reading.channel) : null,
      limit: reading?.limit ?? null,
      kind: reading?.kind ?? 'number',
      sense: reading?.sense ?? 'made',
    };
  });
}

export function readChannel(facts: Facts, frame: Float64Array, id: string): number | null {
  const index = facts.channels.findIndex((channel) => channel.id === id);
  return index < 0 ? null : (frame[index] ?? null);
}
