import type { Setting } from '../../engine/index.ts';

/** How near a dial can be set to what the sheet says: shares of the value, and of the dial's reach. */
const OF_VALUE = 0.05;
const OF_REACH = 0.005;

export function sameDial(one: Pick<Setting, 'part' | 'setting'>) {
  return ({ part, setting }: Pick<Setting, 'part' | 'setting'>) =>
    part === one.part && setting === one.setting;
}

/** How far a value may lie from the sheet and still be as the sheet, in the dial's unit. */
export function bandOf({ value, min, max }: Setting): number {
  return Math.max(OF_VALUE * Math.abs(value), OF_REACH * (max - min));
}

/** Beyond the band: above it, below it, or within. */
export function sideOf(sheet: Setting, value: number): 'higher' | 'lower' | 'as the sheet' {
  const off = value - sheet.value;
  if (Math.abs(off) <= bandOf(sheet)) return 'as the sheet';
  return off > 0 ? 'higher' : 'lower';
}
