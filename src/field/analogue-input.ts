/**
 * How a measured signal arrives over its wires: reading = gain · min(value, most) + zero, all in
 * the device's own unit. The wiring network sets it whenever its circuit changes, so that a step
 * only multiplies. Span and zero were set with the circuit as built: sound wires give 1, ∞ and 0.
 */
export interface AnalogueInput {
  gain: number;
  zero: number;
  most: number;
}

export function createAnalogueInput(): AnalogueInput {
  return { gain: 1, zero: 0, most: Number.POSITIVE_INFINITY };
}

export function arrive(input: AnalogueInput, value: number): number {
  return input.gain * Math.min(value, input.most) + input.zero;
}
