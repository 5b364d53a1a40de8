import type { Atlas, AtlasKey } from '../atlas/atlas.ts';
import type { Sample } from '../atlas/take-sample.ts';
import { withPlant } from '../atlas/with-plant.ts';
import {
  afterSeeing,
  type Belief,
  causeShares,
  priorBelief,
  sharesOf,
} from '../reasoning/belief.ts';
import { type Ask, asksOf, isWatching } from './asks.ts';
import { nextAsk } from './next-ask.ts';
import { standingCauses } from './standing-causes.ts';

export interface PathStep {
  readonly check: string;
  /** The moment of it that told most of the cause. */
  readonly moment: string;
  /** Kept up through a start, with others that can be. */
  readonly inStart: boolean;
  readonly minutes: number;
  /** Expected gain before it was made, bits. */
  readonly bits: number;
  /** What was not as on a sound plant, the first of it. */
  readonly told: readonly {
    readonly moment: string;
    readonly aspect: string;
    readonly word: string;
  }[];
  /** Share of the cause afterwards, with those that cannot be told from it. */
  readonly share: number;
}

/** The way to one cause of a plant. */
export interface CauseFound {
  /** The cause that it ends at, or the likeliest of its own where it ends at none. */
  readonly cause: string | null;
  readonly path: readonly PathStep[];
  readonly found: boolean;
  /** Other causes that all permitted checks together leave standing; null: nothing wrong. */
  readonly inseparable: readonly (string | null)[];
  /** Without what is not permitted the rest stays; this would tell it for the least cost. */
  readonly wouldSeparate: { readonly check: string; readonly moment: string } | null;
}

/** Known well enough to act on. */
const KNOWN_SHARE = 0.9;
const MOST_STEPS = 20;
const MOST_TOLD = 4;

/**
 * @param own faults that stand; none: nothing is wrong
 * @param mended faults that are already out of it, after whose repair a start was watched
 */
export function findCause(
  shipped: Atlas,
  truth: Sample,
  own: readonly string[],
  tools: readonly string[] | 'all',
  mended: readonly string[] = [],
): CauseFound {
  const atlas = withPlant(without(shipped, mended), own[0] ?? null, truth);
  const asks = asksOf(atlas, truth, tools);
  const permitted = asks.filter((ask) => ask.permitted && ask.moments.length > 0);
  const isKnown = (ask: Ask) => ask.onArrival || (mended.length > 0 && isWatching(ask));
  const isOwn = atlas.causes.map(({ fault }) =>
    fault === null ? own.length === 0 : own.includes(fault),
  );
  const rest = standingCauses(atlas, permitted, (cause) => isOwn[cause] === true);
  const ownShares = (belief: Belief) =>
    causeShares(atlas, sharesOf(belief)).map((share, c) => (isOwn[c] ? share : 0));
  const shareOf = (belief: Belief) => {
    const shares = causeShares(atlas, sharesOf(belief));
    return shares.reduce((sum, share, c) => (isOwn[c] || rest.includes(c) ? sum + share : sum), 0);
  };

  const path: PathStep[] = [];
  let belief = afterSeeing(
    priorBelief(atlas),
    atlas,
    asks.flatMap((ask) => (isKnown(ask) ? ask.seen : [])),
  );
  let open = permitted.filter((ask) => !isKnown(ask));
  // Where a start shows nothing of it, no way leads there.
  const shows = own.length === 0 || rest.every((c) => atlas.causes[c]?.fault !== null);
  while (shows && path.length < MOST_STEPS && shareOf(belief) < KNOWN_SHARE) {
    const next = nextAsk(atlas, belief, open);
    if (next === null) break;
    const { ask, bits } = next;
    const moment = tellingMoment(atlas, belief, ask, shareOf);
    belief = afterSeeing(belief, atlas, ask.seen);
    open = open.filter((one) => one !== ask);
    const { question, inStart, minutes } = ask;
    const told = toldBy(atlas, ask, moment);
    path.push({
      check: question.check,
      moment,
      inStart,
      minutes,
      bits,
      told,
      share: shareOf(belief),
    });
  }
  const shares = ownShares(belief);
  const likeliest = shares.indexOf(Math.max(...shares));
  const would = separator(
    atlas,
    asks.filter((ask) => !ask.permitted),
    rest,
  );
  return {
    cause: atlas.causes[likeliest]?.fault ?? null,
    path,
    found: shows && shareOf(belief) >= KNOWN_SHARE,
    inseparable: rest.map((c) => atlas.causes[c]?.fault ?? null),
    wouldSeparate: would && {
      check: would.question.check,
      moment: would.moments.at(-1) ?? would.question.moment,
    },
  };
}

/** What was mended is no cause any more. */
function without(atlas: Atlas, mended: readonly string[]): Atlas {
  if (mended.length === 0) return atlas;
  return {
    ...atlas,
    causes: atlas.causes.map((cause) =>
      cause.fault !== null && mended.includes(cause.fault)
        ? { ...cause, priorWeight: HARDLY * cause.priorWeight }
        : cause,
    ),
  };
}
const HARDLY = 1e-3;

function tellingMoment(
  atlas: Atlas,
  belief: Belief,
  { seen, moments, question }: Ask,
  shareOf: (belief: Belief) => number,
): string {
  let best = question.moment;
  let most = Number.NEGATIVE_INFINITY;
  for (const moment of moments) {
    const then = seen.filter(({ key }) => atlas.keys[key]?.moment === moment);
    const share = shareOf(afterSeeing(belief, atlas, then));
    if (share <= most) continue;
    most = share;
    best = moment;
  }
  return best;
}

/** What of an answer is not as it would be on a sound plant; that of the telling moment first. */
function toldBy(atlas: Atlas, { seen, moments }: Ask, telling: string): PathStep['told'] {
  const soundPlant = atlas.own === 0 ? 1 : 0;
  const told = seen.flatMap(({ key, bin }) => {
    const { moment, aspect, bins, column } = atlas.keys[key] as AtlasKey;
    const word = bins[bin] ?? '';
    return bin === column[soundPlant] || word === 'in band' ? [] : [{ moment, aspect, word }];
  });
  const placeOf = (moment: string) => (moment === telling ? -1 : moments.indexOf(moment));
  return told.sort((a, b) => placeOf(a.moment) - placeOf(b.moment)).slice(0, MOST_TOLD);
}

/** The cheapest question on which no plant of the rest answers as that of the case does. */
function separator(atlas: Atlas, asks: readonly Ask[], rest: readonly number[]): Ask | null {
  const { own } = atlas;
  if (rest.length === 0 || own === undefined) return null;
  const separating = asks.filter(({ question: { column } }) =>
    atlas.causeOf.every((cause, p) => !rest.includes(cause) || column[p] !== column[own]),
  );
  return [...separating].sort((a, b) => a.cost - b.cost)[0] ?? null;
}
