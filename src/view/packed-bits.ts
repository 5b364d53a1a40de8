/** Wires or elements that one recorded word of the wiring carries. */
export const BITS_A_WORD = 30;
