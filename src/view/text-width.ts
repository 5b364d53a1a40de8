export type TextWeight = 400 | 600;

/**
 * Advance widths of IBM Plex Sans in thousandths of an em, read from the font files the
 * page ships (version 5.3.0 of their package). The drawing is laid out with these, so it
 * is the same in a browser and in a test, and does not shift when the font arrives late.
 */
const ASCII = {
  400: [
    236, 284, 419, 713, 598, 927, 694, 242, 335, 335, 450, 600, 272, 399, 272, 383, 600, 600, 600,
    600, 600, 600, 600, 600, 600, 600, 292, 292, 600, 600, 600, 477, 891, 641, 653, 621, 671, 583,
    559, 695, 707, 400, 510, 634, 501, 812, 707, 708, 606, 708, 640, 581, 572, 678, 609, 891, 613,
    593, 580, 317, 383, 317, 600, 565, 600, 534, 580, 503, 580, 549, 324, 528, 568, 250, 250, 527,
    272, 873, 568, 560, 580, 580, 367, 487, 351, 568, 492, 768, 507, 499, 464, 343, 314, 343, 600,
  ],
  600: [
    236, 309, 471, 656, 600, 960, 713, 260, 337, 337, 556, 600, 299, 402, 299, 437, 600, 600, 600,
    600, 600, 600, 600, 600, 600, 600, 319, 319, 600, 600, 600, 493, 899, 672, 663, 642, 689, 600,
    577, 712, 719, 423, 545, 678, 521, 817, 719, 712, 641, 712, 664, 611, 580, 689, 638, 949, 655,
    632, 599, 329, 437, 329, 600, 559, 600, 559, 600, 513, 600, 558, 350, 545, 588, 275, 275, 562,
    294, 888, 588, 563, 600, 600, 393, 499, 374, 588, 524, 819, 544, 524, 502, 363, 376, 363, 600,
  ],
} as const satisfies Record<TextWeight, readonly number[]>;

const BEYOND_ASCII: Readonly<Record<string, number>> = {
  '°': 469,
  '·': 349,
  µ: 593,
  '−': 600,
  '–': 588,
  '₂': 401,
  '²': 347,
  '³': 346,
  '…': 869,
  '’': 292,
  '\u00a0': 236,
};
const UNKNOWN = 720;

export function textWidth(text: string, fontPx: number, weight: TextWeight): number {
  const widths = ASCII[weight];
  let total = 0;
  for (const character of text) {
    const code = character.charCodeAt(0) - 32;
    total += widths[code] ?? BEYOND_ASCII[character] ?? UNKNOWN;
  }
  return (total * fontPx) / 1000;
}
