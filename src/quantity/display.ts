/**
 * How a quantity is shown. Inside everything is SI; a kind says what the number is,
 * a system says what the reader is used to. Conversion factors are exact by definition
 * (inch 25.4 mm, foot 12 of them, pound 0.45359237 kg, standard gravity) or rounded past display digits.
 */
import type { Unit } from './units.ts';

export const UNIT_SYSTEMS = ['SI', 'US'] as const;
export type UnitSystem = (typeof UNIT_SYSTEMS)[number];

export const QUANTITY_KINDS = [
  'gas pressure',
  'air pressure',
  'vessel pressure',
  'temperature',
  'gas flow',
  'air flow',
  'steam flow',
  'angle',
  'shaft speed',
  'frequency',
  'current',
  'flame current',
  'power',
  'level',
  'share',
  'gas share',
  'trace gas',
  'leak',
  'volume',
  'pipe volume',
  'volume flow',
  'voltage',
  'loop current',
  'resistance',
  'time',
  'word',
  'number',
] as const;
export type QuantityKind = (typeof QUANTITY_KINDS)[number];

export interface Display {
  readonly symbol: string;
  readonly factor: number;
  readonly offset: number;
  readonly digits: number;
}

const show = (symbol: string, factor: number, digits: number, offset = 0): Display => ({
  symbol,
  factor,
  offset,
  digits,
});

const PA_PER_INCH_WATER = 249.08891;
const PA_PER_PSI = 6894.757293;
const KG_PER_LB = 0.45359237;
const FT3_PER_M3 = 1 / (0.3048 * 0.3048 * 0.3048);

const SHARED: Record<
  Exclude<
    QuantityKind,
    | 'gas pressure'
    | 'air pressure'
    | 'vessel pressure'
    | 'temperature'
    | 'gas flow'
    | 'air flow'
    | 'steam flow'
    | 'level'
    | 'leak'
    | 'volume'
    | 'pipe volume'
    | 'volume flow'
  >,
  Display
> = {
  angle: show('°', 1, 1),
  'shaft speed': show('rpm', 1, 0),
  frequency: show('Hz', 1, 1),
  current: show('A', 1, 1),
  'flame current': show('µA', 1, 1),
  power: show('W', 1, 0),
  share: show('%', 100, 0),
  'gas share': show('%', 100, 1),
  'trace gas': show('ppm', 1e6, 0),
  voltage: show('V', 1, 1),
  'loop current': show('mA', 1000, 2),
  resistance: show('Ω', 1, 0),
  time: show('s', 1, 1),
  word: show('', 1, 0),
  number: show('', 1, 2),
};

const DISPLAYS: Record<UnitSystem, Record<QuantityKind, Display>> = {
  SI: {
    ...SHARED,
    'gas pressure': show('mbar', 0.01, 1),
    'air pressure': show('mbar', 0.01, 2),
    'vessel pressure': show('bar', 1e-5, 2),
    temperature: show('°C', 1, 0, -273.15),
    'gas flow': show('kg/h', 3600, 1),
    'air flow': show('kg/s', 1, 2),
    'steam flow': show('kg/s', 1, 2),
    level: show('mm', 1000, 0),
    leak: show('dm³/h', 1, 0),
    volume: show('m³', 1, 2),
    'pipe volume': show('dm³', 1000, 1),
    'volume flow': show('m³/h', 3600, 0),
  },
  US: {
    ...SHARED,
    'gas pressure': show('inWC', 1 / PA_PER_INCH_WATER, 1),
    'air pressure': show('inWC', 1 / PA_PER_INCH_WATER, 2),
    'vessel pressure': show('psi', 1 / PA_PER_PSI, 1),
    temperature: show('°F', 1.8, 0, -459.67),
    'gas flow': show('lb/h', 3600 / KG_PER_LB, 1),
    'air flow': show('lb/s', 1 / KG_PER_LB, 2),
    'steam flow': show('lb/s', 1 / KG_PER_LB, 2),
    level: show('in', 1000 / 25.4, 1),
    leak: show('ft³/h', FT3_PER_M3 / 1000, 2),
    volume: show('ft³', FT3_PER_M3, 1),
    'pipe volume': show('ft³', FT3_PER_M3, 4),
    'volume flow': show('ft³/min', 60 * FT3_PER_M3, 0),
  },
};

export function displayOf(kind: QuantityKind, system: UnitSystem): Display {
  return DISPLAYS[system][kind];
}

export function toDisplay(value: number, kind: QuantityKind, system: UnitSystem): number {
  const d = DISPLAYS[system][kind];
  return value * d.factor + d.offset;
}

export function fromDisplay(shown: number, kind: QuantityKind, system: UnitSystem): number {
  const d = DISPLAYS[system][kind];
  return (shown - d.offset) / d.factor;
}

/** Digits only, with the sign of zero dropped so that no reading says "-0.0". */
export function formatNumber(value: number, kind: QuantityKind, system: UnitSystem): string {
  const d = DISPLAYS[system][kind];
  const text = (value * d.factor + d.offset).toFixed(d.digits);
  return /^-0(\.0+)?$/.test(text) ? text.slice(1) : text;
}

/** Digits and symbol, as a label shows them: "100.3 mbar". */
export function formatQuantity(value: number, kind: QuantityKind, system: UnitSystem): string {
  const symbol = DISPLAYS[system][kind].symbol;
  const digits = formatNumber(value, kind, system);
  return symbol === '' ? digits : symbol === '°' ? `${digits}°` : `${digits} ${symbol}`;
}

/** Reads a kind for a bare unit, where no better hint is at hand. */
export function kindOfUnit(unit: Unit): QuantityKind {
  switch (unit) {
    case 'Pa':
      return 'gas pressure';
    case 'K':
      return 'temperature';
    case 'kg/s':
      return 'gas flow';
    case '°':
      return 'angle';
    case 'rpm':
      return 'shaft speed';
    case 'Hz':
      return 'frequency';
    case 'A':
      return 'current';
    case 'µA':
      return 'flame current';
    case 'W':
      return 'power';
    case 'm':
      return 'level';
    case 's':
      return 'time';
    case 'dm³/h':
      return 'leak';
    default:
      return 'number';
  }
}
