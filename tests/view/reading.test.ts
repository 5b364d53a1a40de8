import { describe, expect, it } from 'vitest';
import { mixColours, paletteOf } from '../../src/view/palette.ts';
import { siReading } from '../../src/view/reading.ts';
import { textWidth } from '../../src/view/text-width.ts';

describe('readings where the page gives no units of its own', () => {
  it.each([
    [4980, 'Pa', '49.8 mbar'],
    [-12, 'Pa', '−0.1 mbar'],
    [-2, 'Pa', '0.0 mbar'],
    [940_000, 'Pa', '9.4 bar'],
    [1740, 'rpm', '1\u00a0740 rpm'],
    [304.15, 'K', '31 °C'],
    [0.006, 'm', '6 mm'],
    [81.44, '°', '81.4°'],
    [0.5, '1', '50 %'],
    [Number.NaN, 'Pa', '–'],
  ])('%d %s reads %s', (value, unit, text) => {
    expect(siReading(value, unit)).toBe(text);
  });
});

describe('the colours', () => {
  it.each(['light', 'dark'] as const)(
    '%s: letters stand out from their ground (WCAG AA)',
    (theme) => {
      const palette = paletteOf(theme);
      for (const ground of [palette.ground, palette.panel]) {
        for (const ink of [palette.ink, palette.dim, palette.wrong]) {
          expect([ink, ground, contrast(ink, ground) >= 4.5]).toEqual([ink, ground, true]);
        }
      }
    },
  );

  it('mix from one to the other', () => {
    expect(mixColours('#000000', '#ffffff', 0)).toBe(0);
    expect(mixColours('#102030', '#304050', 0.5)).toBe(0x203040);
    expect(mixColours('#000000', '#ffffff', 1)).toBe(0xffffff);
  });
});

describe('widths of letters', () => {
  it('all figures are equally wide, so that a changing reading stands still', () => {
    for (const weight of [400, 600] as const) {
      const widths = [...'0123456789'].map((digit) => textWidth(digit, 16, weight));
      expect(new Set(widths).size).toBe(1);
    }
  });
});

/** Contrast ratio of WCAG 2.2, from relative luminance of sRGB. */
function contrast(a: string, b: string): number {
  const [light, dark] = [luminance(a), luminance(b)].sort((p, q) => q - p);
  return (light + 0.05) / (dark + 0.05);
}
function luminance(hex: string): number {
  const value = Number.parseInt(hex.slice(1), 16);
  const part = (shift: number): number => {
    const share = ((value >> shift) & 255) / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  };
  return 0.2126 * part(16) + 0.7152 * part(8) + 0.0722 * part(0);
}
