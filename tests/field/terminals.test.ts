import { describe, expect, it } from 'vitest';
import { COMMANDS, INPUTS, TARGETS } from '../../machines/burner/index.ts';
import { ALL_INPUTS, COMMAND_BITS, INPUT_BITS, TARGET_INDEX } from '../../src/field/index.ts';

describe('terminals of the field', () => {
  it('have the bits, the order and the names of the machine’s inputs', () => {
    expect(Object.entries(INPUT_BITS)).toEqual(INPUTS.map((name, bit) => [name, 2 ** bit]));
    expect(ALL_INPUTS).toBe(2 ** INPUTS.length - 1);
  });

  it('have the bits, the order and the names of its commands', () => {
    expect(Object.entries(COMMAND_BITS)).toEqual(COMMANDS.map((name, bit) => [name, 2 ** bit]));
  });

  it('number the targets as the machine does', () => {
    expect(Object.entries(TARGET_INDEX)).toEqual(TARGETS.map((name, index) => [name, index]));
  });
});
