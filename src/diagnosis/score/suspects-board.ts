/** What it may be, with the readings that speak for and against each. */
import { exactLog } from '../../numeric/index.ts';
import type { BoardLine, PartShare, Told } from './reasoning.ts';
import { likeliestParts, shareOfPart } from './shares-of-parts.ts';
import {
  agreeing,
  type Bearing,
  bearingsOn,
  differing,
  speaksAgainst,
  speaksFor,
} from './speaking.ts';
import type { View } from './view-of-knowing.ts';

const MOST_LINES = 8;
const MOST_TOLD = 4;
/** Less than this is not worth a line unless somebody suspects it. */
const LEAST_SHARE = 0.005;
/** Rivals that fit a reading so many times better, and nothing left: it is ruled out. */
const RULES_OUT = exactLog(10);
const RULED_OUT_SHARE = 0.05;

/** @param suspected parts that somebody has in mind */
export function boardOf(view: View, suspected: readonly string[]): readonly BoardLine[] {
  const { tables, ofCause } = view;
  const likeliest = likeliestParts(tables, ofCause, MOST_LINES).filter(
    ({ share }) => share >= LEAST_SHARE,
  );
  const others = [...new Set(suspected)]
    .filter((part) => !likeliest.some((one) => one.part === part))
    .map((part): PartShare => ({ part, share: shareOfPart(tables, ofCause, part) }));
  return [...likeliest, ...others]
    .sort((a, b) => b.share - a.share)
    .map(({ part, share }) => ({ part, share, ...bearingsSaid(view, part) }));
}

/** Readings that ruled a part out; none where it may still be. */
export function refutedBy(view: View, part: string): readonly Told[] {
  const { tables, ofCause } = view;
  const causes = tables.parts.causesOf(part);
  if (causes.length === 0 || shareOfPart(tables, ofCause, part) >= RULED_OUT_SHARE) return [];
  const ruling = bearingsOn(view, causes).filter(({ besideRivals }) => besideRivals <= -RULES_OUT);
  return strongest(
    ruling,
    ({ besideRivals }) => -besideRivals,
    ({ evidence }) => differing(view, causes, evidence),
  );
}

function bearingsSaid(view: View, part: string): Pick<BoardLine, 'speaksFor' | 'speaksAgainst'> {
  const causes = view.tables.parts.causesOf(part);
  if (causes.length === 0) return { speaksFor: [], speaksAgainst: [] };
  const all = bearingsOn(view, causes);
  return {
    speaksFor: strongest(
      all.filter(speaksFor),
      ({ forIt }) => forIt,
      ({ evidence }) => agreeing(view, causes, evidence),
    ),
    speaksAgainst: strongest(
      all.filter(speaksAgainst),
      ({ besideRivals }) => -besideRivals,
      ({ evidence }) => differing(view, causes, evidence),
    ),
  };
}

/** The strongest first; the same thing at another moment is said once. */
function strongest(
  all: readonly Bearing[],
  by: (bearing: Bearing) => number,
  toldBy: (bearing: Bearing) => readonly Told[],
): readonly Told[] {
  const told: Told[] = [];
  for (const bearing of [...all].sort((a, b) => by(b) - by(a))) {
    for (const one of toldBy(bearing)) {
      const said = told.some(({ check, aspect }) => check === one.check && aspect === one.aspect);
      if (!said) told.push(one);
    }
    if (told.length >= MOST_TOLD) break;
  }
  return told.slice(0, MOST_TOLD);
}
