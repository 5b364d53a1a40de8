import type { Reading } from './message.ts';

interface Display {
  readonly factor: number;
  readonly offset: number;
  readonly digits: number;
  readonly suffix: string;
}

const MINUS = '−';
const GAP = '\u00a0';
const NOT_THERE = '–';

const DISPLAYS: Readonly<Record<string, Display>> = {
  K: { factor: 1, offset: -273.15, digits: 0, suffix: ' °C' },
  'kg/s': { factor: 1, offset: 0, digits: 3, suffix: ' kg/s' },
  rpm: { factor: 1, offset: 0, digits: 0, suffix: ' rpm' },
  Hz: { factor: 1, offset: 0, digits: 1, suffix: ' Hz' },
  A: { factor: 1, offset: 0, digits: 1, suffix: ' A' },
  µA: { factor: 1, offset: 0, digits: 1, suffix: ' µA' },
  W: { factor: 1, offset: 0, digits: 0, suffix: ' W' },
  V: { factor: 1, offset: 0, digits: 1, suffix: ' V' },
  m: { factor: 1000, offset: 0, digits: 0, suffix: ' mm' },
  s: { factor: 1, offset: 0, digits: 1, suffix: ' s' },
  '°': { factor: 1, offset: 0, digits: 1, suffix: '°' },
  '1': { factor: 100, offset: 0, digits: 0, suffix: ' %' },
};
const MILLIBAR: Display = { factor: 0.01, offset: 0, digits: 1, suffix: ' mbar' };
const BAR: Display = { factor: 1e-5, offset: 0, digits: 1, suffix: ' bar' };
const BAR_FROM_PA = 2e5;

/** Readings in SI with the prefixes the trade uses; stands in where the page gives no other. */
export const siReading: Reading = (value, unit, channel) => {
  if (!Number.isFinite(value)) return NOT_THERE;
  const isVessel = channel?.startsWith('vessel.') === true;
  const display = unit === 'Pa' ? pressureDisplay(value, isVessel) : DISPLAYS[unit];
  if (display === undefined) return `${figures(value, 1)} ${unit}`;
  return figures(value * display.factor + display.offset, display.digits) + display.suffix;
};

function pressureDisplay(pa: number, isVessel: boolean): Display {
  return isVessel || Math.abs(pa) >= BAR_FROM_PA ? BAR : MILLIBAR;
}

/** Decimal point, thousands parted by a gap, a true minus, and no "−0.0". */
export function figures(value: number, digits: number): string {
  const fixed = Math.abs(value).toFixed(digits);
  const zero = Number(fixed) === 0;
  const point = fixed.indexOf('.');
  const whole = point < 0 ? fixed : fixed.slice(0, point);
  const parted = whole.length > 3 ? `${whole.slice(0, -3)}${GAP}${whole.slice(-3)}` : whole;
  return (value < 0 && !zero ? MINUS : '') + parted + (point < 0 ? '' : fixed.slice(point));
}
