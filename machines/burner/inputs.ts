import { INPUTS, type InputName } from './terminals.ts';

/** The bit of each input in the packed word. */
export const INPUT_BITS = Object.fromEntries(
  INPUTS.map((input, place) => [input, 1 << place]),
) as Readonly<Record<InputName, number>>;

/**
 * The one way the machine looks at its inputs. It is handed to the guards, so that whoever
 * explores the machine can see exactly which inputs a decision rested on.
 */
export type ReadInput = (word: number, bit: number) => boolean;

export const readInput: ReadInput = (word, bit) => (word & bit) !== 0;
