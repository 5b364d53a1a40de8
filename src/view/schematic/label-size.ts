import { textWidth } from '../text-width.ts';
import type { LineText, Tone } from './label-lines.ts';
import type { LabelSpec } from './labels.ts';
import type { Size } from './layout-types.ts';

/** A tick is as wide as this share of the letters' size, its gap included. */
export const TICK_EM = 0.95;

export function weightOf(tone: Tone): 400 | 600 {
  return tone === 'name' ? 400 : 600;
}

export function lineWidth(runs: readonly LineText[], fontPx: number): number {
  let width = 0;
  for (const run of runs) {
    width += textWidth(run.text, fontPx, weightOf(run.tone)) + (run.tick ? TICK_EM * fontPx : 0);
  }
  return width;
}

/** The room a label needs whatever it comes to say. */
export function labelSize(spec: LabelSpec | undefined, fontPx: number, lineHeightPx: number): Size {
  if (spec === undefined) return { width: 0, height: 0 };
  let width = 0;
  for (const line of spec.lines) {
    for (const runs of line.widest) width = Math.max(width, lineWidth(runs, fontPx));
  }
  return { width: Math.ceil(width), height: spec.lines.length * lineHeightPx };
}
