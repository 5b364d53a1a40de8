import type { QuantityKind } from '../../quantity/index.ts';
import { partsOfCheck } from './reading.ts';

/** Smallest difference that means something, by what is measured; SI. Own training values. */
const BY_TOOL: Readonly<Record<string, number>> = {
  manometer: 40,
  'flame-signal meter': 0.3,
  'leak spray': 0,
  strobe: 15,
  thermometer: 3,
  multimeter: 0.3,
  volts: 2,
};
const BY_LINE: Readonly<Record<string, number>> = {
  oxygen: 0.004,
  'carbon-monoxide': 3e-5,
  temperature: 6,
};
const BY_EYE: readonly (readonly [RegExp, number])[] = [
  [/Share$/, 0.05],
  [/Deg$/, 2],
  [/Hz$/, 1],
  [/A$/, 0.5],
  [/Mm$/, 0.3],
  [/Hour$/, 0.3],
  [/LevelM$|^levelM$/, 0.04],
  [/Pa$/, 2e4],
  [/C$/, 4],
];
const BY_KIND: Readonly<Partial<Record<QuantityKind, number>>> = {
  'shaft speed': 15,
  angle: 1.5,
  share: 0.03,
  number: 0.4,
  'vessel pressure': 3e4,
  temperature: 4,
  level: 0.06,
};
const DURATION_S = 0.6;
/** Of an eye or a display that is not listed, and of a dial. */
const SHARE = 0.02;

/** @param kind of the channel, where the reading is a channel of the panel */
export function resolutionOf(check: string, aspect: string, kind: QuantityKind | null): number {
  const { what } = partsOfCheck(check);
  if (what === 'flue-gas analyser') return BY_LINE[aspect] ?? 0;
  if (what === 'look') return BY_EYE.find(([name]) => name.test(aspect))?.[1] ?? SHARE;
  if (aspect === 'duration') return DURATION_S;
  if (kind !== null) return BY_KIND[kind] ?? SHARE;
  return BY_TOOL[what] ?? 0;
}
