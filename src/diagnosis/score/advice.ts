/** What is best done next, and how the likeliest parts would answer. */
import type { Atlas } from '../atlas/atlas.ts';
import { gainBits } from '../reasoning/gain.ts';
import type { CaseTables } from './case-tables.ts';
import { type RankedAsk, worthAsking } from './ranking.ts';
import type { Advice, PartShare } from './reasoning.ts';
import { likeliestParts } from './shares-of-parts.ts';
import type { View } from './view-of-knowing.ts';
import { questionOfKeys } from './worth-of-looking.ts';

const MOST_ADVICE = 5;
/** How the likeliest parts would answer, these many of them. */
const MOST_PARTS = 4;
const LEAST_SHARE = 0.02;

export function adviceOn(view: View): readonly Advice[] {
  const ranked = worthAsking(view.ranked());
  const best = view.thought()?.best ?? null;
  const others = ranked.filter((one) => one !== best);
  const all = best === null ? others : [best, ...others];
  const checks = new Set<string>();
  const distinct = all.filter(({ ask }) => {
    const { check } = ask.question;
    if (checks.has(check)) return false;
    checks.add(check);
    return true;
  });
  return distinct.slice(0, MOST_ADVICE).map((one) => adviceOf(view, one));
}

/** The best there is; null where nothing is worth asking. */
export function bestAdvice(view: View): RankedAsk | null {
  return view.thought()?.best ?? worthAsking(view.ranked())[0] ?? null;
}

export function adviceOf(view: View, { ask, bits }: RankedAsk): Advice {
  const { tables } = view;
  const { moment, keys } = tellingMoment(view, ask.question.keys);
  const parts = likeliestParts(tables, view.ofCause, MOST_PARTS).filter(
    ({ share }, i) => i < 2 || share >= LEAST_SHARE,
  );
  return {
    check: ask.question.check,
    moment,
    bits,
    minutes: ask.minutes,
    splits: splitsOf(view, keys, parts),
  };
}

/** Of the moments of a question, the one that tells most. */
function tellingMoment(
  { tables, uncertainty }: View,
  keys: readonly number[],
): { readonly moment: string; readonly keys: readonly number[] } {
  const byMoment = new Map<string, number[]>();
  for (const key of keys) {
    const moment = tables.atlas.keys[key]?.moment ?? '';
    byMoment.set(moment, [...(byMoment.get(moment) ?? []), key]);
  }
  let best = { moment: '', keys };
  let most = -1;
  for (const [moment, own] of byMoment) {
    const question = questionOfKeys(tables, own);
    const bits = question === null ? 0 : gainBits(uncertainty, question);
    if (bits > most + 1e-12) {
      most = bits;
      best = { moment, keys: own };
    }
  }
  return best;
}

/** By the one thing that sets the parts apart best. */
function splitsOf(
  view: View,
  keys: readonly number[],
  parts: readonly PartShare[],
): Advice['splits'] {
  let best: Advice['splits'] = [];
  let most = 0;
  for (const key of keys) {
    const at = view.tables.atlas.keys[key];
    if (at === undefined) continue;
    const read = parts.map(({ part, share }) => ({ part, share, ...wordOf(view, at, part) }));
    const apart = apartness(read);
    if (apart <= most) continue;
    most = apart;
    best = read.map(({ part, word }) => ({ part, aspect: at.aspect, word }));
  }
  return best;
}

interface Read {
  readonly word: string;
  readonly sure: number;
  readonly share: number;
}

/** Sum over pairs that read differently, by how likely and how sure both are. */
function apartness(read: readonly Read[]): number {
  let sum = 0;
  read.forEach((a, i) => {
    for (const b of read.slice(i + 1)) {
      if (a.word !== b.word) sum += a.share * b.share * a.sure * b.sure;
    }
  });
  return sum;
}

/** What the plants of a part would read there as a rule, and how sure that is. */
function wordOf(
  { shares, tables }: View,
  { bins, column }: Atlas['keys'][number],
  part: string,
): { readonly word: string; readonly sure: number } {
  const weights = bins.map(() => 0);
  for (const p of particlesOf(tables, part)) {
    const bin = column[p] as number;
    weights[bin] = (weights[bin] ?? 0) + (shares[p] as number);
  }
  const all = weights.reduce((a, b) => a + b, 0);
  const most = weights.reduce((a, b) => Math.max(a, b), 0);
  return { word: bins[weights.indexOf(most)] ?? '', sure: all > 0 ? most / all : 0 };
}

function particlesOf({ parts, spans }: CaseTables, part: string): readonly number[] {
  return parts.causesOf(part).flatMap((cause) => {
    const from = spans[cause] as number;
    return Array.from({ length: (spans[cause + 1] as number) - from }, (_, i) => from + i);
  });
}
