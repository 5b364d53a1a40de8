import type { Setting } from '../../engine/index.ts';
import {
  displayOf,
  fromDisplay,
  kindOfUnit,
  type QuantityKind,
  toDisplay,
  type UnitSystem,
} from '../../quantity/index.ts';

/** A dial in the reader's units: what it reads, and what a typed number means. */
export interface SettingScale {
  readonly symbol: string;
  readonly digits: number;
  shown(value: number): string;
  /** From typed digits to the setting's own unit; null where they are no number. */
  typed(text: string): number | null;
}

/** Dials that reach further than this are read in the units of a vessel. */
const VESSEL_PA = 1e5;
const PLAIN_DIGITS = 2;

export function settingScale(setting: Setting, units: UnitSystem): SettingScale {
  const kind = kindOfSetting(setting);
  const { symbol, digits } =
    kind === null
      ? { symbol: setting.unit === '1' ? '' : setting.unit, digits: PLAIN_DIGITS }
      : displayOf(kind, units);
  const out = (value: number) => (kind === null ? value : toDisplay(value, kind, units));
  return {
    symbol,
    digits,
    shown: (value) => trimmed(out(value).toFixed(digits)),
    typed: (text) => {
      const number = Number(text.trim().replace(',', '.').replace('−', '-'));
      if (text.trim() === '' || !Number.isFinite(number)) return null;
      return kind === null ? number : fromDisplay(number, kind, units);
    },
  };
}

/** Null where the number is shown as it is: a difference in kelvins, hours, degrees Celsius. */
function kindOfSetting({ unit, max }: Setting): QuantityKind | null {
  if (unit === 'Pa') return max > VESSEL_PA ? 'vessel pressure' : 'gas pressure';
  const kind = kindOfUnit(unit);
  return kind === 'number' || kind === 'temperature' ? null : kind;
}

function trimmed(text: string): string {
  return text.includes('.') ? text.replace(/\.?0+$/, '') : text;
}
