/** A 32-bit word spread over all 32 bits: every input bit moves about half of the output bits. */
export function scramble(word: number): number {
  let h = word | 0;
  h = Math.imul(h ^ (h >>> 16), 0x21f0aaad);
  h = Math.imul(h ^ (h >>> 15), 0x735a2d97);
  return (h ^ (h >>> 15)) >>> 0;
}

/** A stable seed, 0…2³²−1, from a text: FNV-1a over its UTF-16 units, then scrambled. */
export function seedFromText(text: string): number {
  let h = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) {
    const unit = text.charCodeAt(i);
    h = Math.imul(h ^ (unit & 0xff), 0x01000193);
    h = Math.imul(h ^ (unit >>> 8), 0x01000193);
  }
  return scramble(h);
}
