import { checkOfWhat } from '../../bench/index.ts';
import type { Advice } from '../../diagnosis/index.ts';
import { say, sayWord } from '../../i18n/index.ts';
import {
  answerWords,
  checkWords,
  lowerFirst,
  momentWords,
  type Names,
  partWords,
  partsOf as placesOf,
} from '../../wording/index.ts';
import { regionOf } from './region-of.ts';

/** A nudge: where thoughts should go, since what is likeliest parts there. */
export function nudgeWords({ check, splits }: Advice): string {
  const region = sayWord('guide.region', regionOf(check));
  const parts = new Set(splits.map(({ part }) => part));
  if (parts.size < 2) return say('guide.nudge.one', { region });
  return say(parts.size === 2 ? 'guide.nudge.two' : 'guide.nudge', { region });
}

/** The kind of check: which tool, which sense, which paper. */
export function kindWords({ check }: Advice): string {
  const { what, place } = placesOf(check);
  if (what === 'look') {
    const opens = checkOfWhat('look', place)?.invasive ?? false;
    return say(opens ? 'guide.kind.open' : 'guide.kind.look');
  }
  const own = sayWord('guide.kind', what);
  return own === what
    ? say('guide.kind.tool', { tool: lowerFirst(sayWord('bench.tool', what)) })
    : own;
}

/** The check, when it is to be made, and what it takes. */
export function whichWords(names: Names, { check, moment, minutes }: Advice): string {
  const what = checkWords(names, check);
  const when = momentWords(moment);
  return say('guide.which', {
    check: when === '' ? what : `${what}, ${when}`,
    minutes: Math.max(1, Math.round(minutes)),
  });
}

/** What it would read, were it one or the other of the likeliest; those that read alike together. */
export function whyLines(
  names: Names,
  { check, moment, splits }: Advice,
): readonly { readonly parts: string; readonly said: string }[] {
  const saidOf = new Map<string, string[]>();
  for (const { part, aspect, word } of splits) {
    const said = answerWords(names, { check, moment, aspect, word });
    saidOf.set(part, [...(saidOf.get(part) ?? []), said]);
  }
  const partsOf = new Map<string, string[]>();
  for (const [part, said] of saidOf) {
    const all = said.join('; ');
    partsOf.set(all, [...(partsOf.get(all) ?? []), partWords(part)]);
  }
  return [...partsOf].map(([said, parts]) => ({ parts: parts.join(', '), said }));
}
