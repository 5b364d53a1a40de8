/**
 * The two 32-bit words of a float64, through one scratch cell.
 *
 * Typed arrays follow the byte order of the processor; the indices below undo that,
 * so the words mean the same on every machine.
 */
const cell = new Float64Array(1);
const words = new Uint32Array(cell.buffer);
cell[0] = 1;
/** Index of the word that holds sign, exponent and the top of the fraction. */
export const HIGH = words[1] === 0 ? 0 : 1;
export const LOW = 1 - HIGH;

/** Write here, then read `floatWords[HIGH]` and `floatWords[LOW]`, or the other way round. */
export const floatCell: Float64Array = cell;
export const floatWords: Uint32Array = words;
