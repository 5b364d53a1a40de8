/** Runs what a written item says is wrong, reads what it says is read, and holds its options to that. */
import { checkName, keyName, type Told } from '../../diagnosis/index.ts';
import type { WrittenItem } from '../../scenario/index.ts';
import { causeSharesOf } from '../evidence/belief-of.ts';
import { eachOnce, PROVED_SHARE, proofsOf } from '../evidence/readings.ts';
import { RULED_OUT_SHARE, refutingReading } from '../evidence/refuting.ts';
import { plantWith, type SeededPlant } from '../evidence/seeded-plant.ts';
import { observationsAt, toldInWords, toldOf } from '../evidence/told.ts';
import type { QuizPlant } from '../item/maker.ts';

export type Evidence = NonNullable<WrittenItem['evidence']>;

export const WRITTEN_TROUBLES = [
  'no such check',
  'not read there',
  'cause not in atlas',
  'key not proved',
  'distractor not ruled out',
  'no reading rules it out',
] as const;

/** What is wrong with the evidence of a written item, and where within it. */
export interface WrittenTrouble {
  readonly trouble: (typeof WRITTEN_TROUBLES)[number];
  /** As in `['readings', 1]` or `['causes', 2]`. */
  readonly path: readonly (string | number)[];
  /** The share that it has, 0 to 1, where one is meant; what would have been there otherwise. */
  readonly share: number | null;
  readonly known: readonly string[];
}

export interface ProvedEvidence {
  readonly seeded: SeededPlant;
  readonly readings: readonly Told[];
  /** Of each option as it is written. */
  readonly shares: readonly number[];
  /** What rules each option out, and for the right one the last reading; in the order they are written. */
  readonly decidedBy: readonly (Told | null)[];
}

export function proveWritten(
  plant: QuizPlant,
  { fault, severity, causes, readings }: Evidence,
):
  | { readonly ok: true; readonly value: ProvedEvidence }
  | { readonly ok: false; readonly troubles: readonly WrittenTrouble[] } {
  const { atlas } = plant;
  const places = causes.map((cause) => atlas.causes.findIndex((one) => one.fault === cause));
  const troubles: WrittenTrouble[] = places.flatMap((place, i) =>
    place >= 0 ? [] : [troubleAt('cause not in atlas', ['causes', i])],
  );
  if (troubles.length > 0) return { ok: false, troubles };
  const seeded = plantWith(plant, { fault, severity });
  const keys = readings.flatMap(({ check, place, other, when }, i) => {
    const name = checkName(check, place, other);
    const found = keysOf(plant, name, when);
    const here = found.filter((key) => isRead(plant, seeded, key));
    if (here.length > 0) return here;
    const known = found.length > 0 ? [] : momentsOf(plant, name);
    troubles.push({
      ...troubleAt(found.length > 0 ? 'not read there' : 'no such check', ['readings', i]),
      known,
    });
    return [];
  });
  if (troubles.length > 0) return { ok: false, troubles };
  const read = observationsAt(plant, seeded, keys);
  const seen = eachOnce([...toldInWords(plant, seeded), ...read]);
  const proofs = proofsOf(plant, seeded);
  const byWords = causeSharesOf(plant, proofs.byWords(read));
  const byChart = causeSharesOf(plant, proofs.byChart(read));
  const key = causes.indexOf(fault);
  const refuted = places.map((place) => refutingReading(plant, seeded, seen, place)?.told ?? null);
  places.forEach((place, i) => {
    const [words = 0, chart = 0] = [byWords[place], byChart[place]];
    const path = ['causes', i];
    if (i === key) {
      const share = Math.min(words, chart);
      if (share < PROVED_SHARE) troubles.push({ ...troubleAt('key not proved', path), share });
      return;
    }
    const share = Math.max(words, chart);
    if (share > RULED_OUT_SHARE) {
      troubles.push({ ...troubleAt('distractor not ruled out', path), share });
    } else if (refuted[i] === null) troubles.push(troubleAt('no reading rules it out', path));
  });
  if (troubles.length > 0) return { ok: false, troubles };
  const told = toldOf(plant, seeded, keys);
  return {
    ok: true,
    value: {
      seeded,
      readings: told,
      shares: places.map((place) => byWords[place] ?? 0),
      decidedBy: refuted.map((one, i) => (i === key ? (told.at(-1) ?? null) : one)),
    },
  };
}

function troubleAt(
  trouble: WrittenTrouble['trouble'],
  path: readonly (string | number)[],
): WrittenTrouble {
  return { trouble, path, share: null, known: [] };
}

function keysOf({ atlas }: QuizPlant, check: string, moment: string): readonly number[] {
  return atlas.keys.flatMap((one, key) =>
    one.check === check && one.moment === moment ? [key] : [],
  );
}

function isRead({ atlas }: QuizPlant, { sample }: SeededPlant, key: number): boolean {
  const at = atlas.keys[key];
  return at !== undefined && sample.has(keyName(at.check, at.moment, at.aspect));
}

/** When that check tells something at this plant; where there is no such check, none. */
function momentsOf({ atlas }: QuizPlant, check: string): readonly string[] {
  const found = atlas.keys.filter((one) => one.check === check).map(({ moment }) => moment);
  return [...new Set(found)];
}
