import type { StepMark, Stretch } from './alignment.ts';

/** A step as the head of the chart names it. */
export interface StepSpan {
  readonly step: number;
  readonly atS: number;
  readonly untilS: number;
  readonly isFuture: boolean;
}
export interface StepLabel {
  readonly text: string;
  readonly x: number;
  readonly isFuture: boolean;
  readonly isCurrent: boolean;
}

/** Actual steps as they were, then the expected ones to come. */
export function spansOf(
  actual: readonly StepMark[],
  stretches: readonly Stretch[],
  nowS: number,
): StepSpan[] {
  const past = actual.map((mark, i) => ({
    step: mark.step,
    atS: mark.tS,
    untilS: actual[i + 1]?.tS ?? nowS,
    isFuture: false,
  }));
  const firstFuture = stretches.find((stretch) => stretch.isFuture);
  if (past.length > 0 && firstFuture !== undefined) {
    past[past.length - 1] = { ...past[past.length - 1], untilS: firstFuture.atS };
  }
  const future = stretches
    .filter((stretch) => stretch.isFuture)
    .map(({ step, atS, untilS }) => ({ step, atS, untilS, isFuture: true }));
  return [...past, ...future];
}

/** Steps of one family ("valve proving: …") that follow one another share a label. */
export function groupSpans(
  spans: readonly StepSpan[],
  familyOf: (step: number) => string,
): (StepSpan & { readonly family: string })[] {
  const groups: (StepSpan & { family: string })[] = [];
  for (const span of spans) {
    const family = familyOf(span.step);
    const last = groups[groups.length - 1];
    if (last !== undefined && last.family === family && last.isFuture === span.isFuture) {
      groups[groups.length - 1] = { ...last, step: span.step, untilS: span.untilS };
    } else groups.push({ ...span, family });
  }
  return groups;
}

/**
 * Names along the top: each at its step's start, as far as they fit beside one another. The
 * current step's name always stands; of the others the longer steps come first.
 */
export function placeStepLabels(
  groups: readonly (StepSpan & { readonly family: string })[],
  xOf: (tS: number) => number,
  widthPx: number,
  measure: (text: string, isCurrent: boolean) => number,
): StepLabel[] {
  const current = groups.reduce((found, group, i) => (group.isFuture ? found : i), -1);
  const wanted = groups.map((group, i) => {
    const isCurrent = i === current;
    const width = measure(group.family, isCurrent) + LABEL_GAP_PX;
    const x = Math.min(xOf(group.atS) + LABEL_INSET_PX, widthPx - width);
    const rank = isCurrent ? Number.POSITIVE_INFINITY : group.untilS - group.atS;
    return { label: { text: group.family, x, isFuture: group.isFuture, isCurrent }, width, rank };
  });
  const placed: typeof wanted = [];
  for (const next of [...wanted].sort((p, q) => q.rank - p.rank)) {
    const free = placed.every(
      (other) =>
        next.label.x + next.width <= other.label.x || other.label.x + other.width <= next.label.x,
    );
    if (free) placed.push(next);
  }
  return wanted.filter((entry) => placed.includes(entry)).map((entry) => entry.label);
}
const LABEL_GAP_PX = 8;
const LABEL_INSET_PX = 4;
