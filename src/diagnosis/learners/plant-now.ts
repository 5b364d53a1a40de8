/** A plant as a simulated learner stands before it: what it answers comes from its own sample. */
import { findFault, remediesOf } from '../../faults/index.ts';
import { binsOf } from '../atlas/observations.ts';
import { keyName, type Sample } from '../atlas/take-sample.ts';
import { type Ask, asksOf, isWatching } from '../author/asks.ts';
import { LOCKED_OUT } from '../observe/moment.ts';
import { checkName } from '../observe/reading.ts';
import type { Case } from '../score/case.ts';
import type { Seen } from '../score/decision.ts';
import type { Work } from './work-on.ts';

/** The plant as it is between two works on it. */
export interface PlantNow {
  readonly mended: readonly string[];
  /** All that can be asked of it, with its answers. */
  readonly asks: readonly Ask[];
  /** It comes into service. */
  readonly starts: boolean;
  /** What eyes on the panel see at once. */
  readonly onArrival: readonly Seen[];
  seenBy(ask: Ask): readonly Seen[];
  /** Eyes on the panel from the call for heat to where the start ends. */
  readonly watched: readonly Seen[];
}

const kept = new WeakMap<Case, Map<string, PlantNow>>();

/** @param mended faults that are out of it */
export function plantNow(theCase: Case, mended: readonly string[]): PlantNow {
  const plants = kept.get(theCase) ?? new Map<string, PlantNow>();
  kept.set(theCase, plants);
  const name = [...new Set(mended)].sort().join();
  const plant = plants.get(name) ?? lookAt(theCase, mended);
  plants.set(name, plant);
  return plant;
}

function lookAt(
  { atlas, tools, questions, truthAfter }: Case,
  mended: readonly string[],
): PlantNow {
  const sample: Sample = truthAfter?.(mended) ?? new Map();
  const bins = binsOf(atlas, sample);
  const asks = asksOf(atlas, sample, tools, questions);
  const seenBy = ({ question, moments }: Ask): readonly Seen[] =>
    moments.map((moment) => ({
      moment,
      readings: question.keys.flatMap((key) => {
        const { check, moment: at, aspect } = atlas.keys[key] as (typeof atlas.keys)[number];
        const value = at === moment ? sample.get(keyName(check, at, aspect)) : undefined;
        return value === undefined || (bins[key] ?? -1) < 0 ? [] : [{ check, aspect, value }];
      }),
    }));
  const watched = asks.filter(isWatching).flatMap(seenBy);
  const onArrival = asks.filter((ask) => ask.onArrival).flatMap(seenBy);
  return {
    mended,
    asks,
    starts: !sample.has(keyName(checkName('history'), LOCKED_OUT, 'cause')),
    onArrival,
    seenBy,
    watched: [...watched, ...onArrival],
  };
}

/** Faults of the case that this work ends. */
export function endedBy(theCase: Case, { part, way }: Work): readonly string[] {
  return theCase.own.filter((id) => {
    const fault = findFault(id);
    if (fault === undefined) return false;
    return remediesOf(fault, theCase.plant).some((one) => one.part === part && one.way === way);
  });
}
