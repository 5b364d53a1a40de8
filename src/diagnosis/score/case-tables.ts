/** What is asked of a case again and again while its decisions are judged, worked out once. */
import type { Atlas } from '../atlas/atlas.ts';
import { NOT_REACHED } from '../atlas/band.ts';
import { type KeyPlaces, keyPlacesOf } from '../atlas/observations.ts';
import { questionCost, questionMinutes } from '../atlas/question-cost.ts';
import { partsOfCheck } from '../observe/reading.ts';
import { causeShares, priorBelief, sharesOf } from '../reasoning/belief.ts';
import { spansOf } from '../reasoning/particles.ts';
import type { Question } from '../reasoning/questions.ts';
import { alikeGroups } from './alike-groups.ts';
import type { Case } from './case.ts';
import { isPermitted } from './is-permitted.ts';
import { type PartsOfCauses, partsOfCauses } from './parts-of-cause.ts';
import { nameOfAsk } from './questions-of-starts.ts';
import { soundWordsOf } from './sound-words.ts';

/** A question with its price. */
export interface Ask {
  readonly question: Question;
  /** `nameOfAsk` of it. */
  readonly name: string;
  readonly permitted: boolean;
  readonly minutes: number;
  /** Minutes with surcharges. */
  readonly cost: number;
  /** Keys that this plant comes to; all where that is not known. */
  readonly reached: readonly number[];
}

export interface CaseTables {
  readonly atlas: Atlas;
  readonly spans: Uint32Array;
  readonly places: KeyPlaces;
  readonly parts: PartsOfCauses;
  /** Faults of the plant where it has several, as places in the causes. */
  readonly together: readonly number[];
  /** Of each cause, those that no permitted check tells from it, itself included. */
  readonly groupOf: () => readonly (readonly number[])[];
  readonly soundWords: ReturnType<typeof soundWordsOf>;
  readonly priorShares: Float64Array;
  readonly priorOfCause: Float64Array;
  readonly asks: readonly Ask[];
  readonly permitted: readonly Ask[];
  readonly askOf: ReadonlyMap<Question, Ask>;
  readonly byName: ReadonlyMap<string, Ask>;
  /** Keys of a check at a moment, by `check@moment`. */
  readonly keysAt: ReadonlyMap<string, readonly number[]>;
  /** Moments at which a check has keys. */
  readonly momentsOf: ReadonlyMap<string, readonly string[]>;
  /** Tools, senses and papers of which the atlas knows something. */
  readonly known: ReadonlySet<string>;
}

const kept = new WeakMap<Case, CaseTables>();

export function tablesOf(theCase: Case): CaseTables {
  const known = kept.get(theCase);
  if (known !== undefined) return known;
  const made = makeTables(theCase);
  kept.set(theCase, made);
  return made;
}

function makeTables(theCase: Case): CaseTables {
  const { atlas, sound, plant, tools, questions, own } = theCase;
  const asks = questions.map((question): Ask => {
    const { check, moment } = question;
    const last = { check, moment: lastReached(atlas, question) };
    return {
      question,
      name: nameOfAsk(check, moment),
      permitted: isPermitted(check, tools),
      minutes: questionMinutes(atlas, last),
      cost: questionCost(atlas, last),
      reached: question.keys.filter((key) => isReached(atlas, key)),
    };
  });
  const keysAt = new Map<string, number[]>();
  const momentsOf = new Map<string, string[]>();
  atlas.keys.forEach(({ check, moment }, key) => {
    const name = `${check}@${moment}`;
    const others = keysAt.get(name);
    if (others !== undefined) {
      others.push(key);
      return;
    }
    keysAt.set(name, [key]);
    const moments = momentsOf.get(check);
    if (moments === undefined) momentsOf.set(check, [moment]);
    else moments.push(moment);
  });
  let groups: readonly (readonly number[])[] | undefined;
  const priorShares = sharesOf(priorBelief(atlas));
  return {
    atlas,
    spans: spansOf(atlas),
    places: keyPlacesOf(atlas),
    parts: partsOfCauses(atlas.causes, plant),
    together: own.length > 1 ? placesOf(atlas, own) : [],
    groupOf: () => {
      groups ??= alikeGroups(theCase);
      return groups;
    },
    soundWords: soundWordsOf(sound),
    priorShares,
    priorOfCause: causeShares(atlas, priorShares),
    asks,
    permitted: asks.filter(({ permitted }) => permitted),
    askOf: new Map(asks.map((ask) => [ask.question, ask] as const)),
    byName: new Map(asks.map((ask) => [ask.name, ask] as const)),
    keysAt,
    momentsOf,
    known: new Set(atlas.keys.map(({ check }) => partsOfCheck(check).what)),
  };
}

/** How far one has to wait: to where the start of this plant ends, as the panel told on arrival. */
function lastReached(atlas: Atlas, { keys, moment }: Question): string {
  let last = moment;
  let longest = -1;
  for (const key of keys) {
    const at = atlas.keys[key];
    if (at === undefined || atlas.own === undefined || !isReached(atlas, key)) continue;
    const reached = atlas.reachedS[at.moment] ?? 0;
    if (reached > longest) {
      longest = reached;
      last = at.moment;
    }
  }
  return last;
}

function isReached({ own, keys }: Atlas, key: number): boolean {
  const at = keys[key];
  return own === undefined || at?.bins[at.column[own] as number] !== NOT_REACHED;
}

function placesOf({ causes }: Atlas, faults: readonly string[]): readonly number[] {
  return causes.flatMap(({ fault }, cause) =>
    fault !== null && faults.includes(fault) ? [cause] : [],
  );
}
