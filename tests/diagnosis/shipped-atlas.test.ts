/** The atlases that the repository ships: whether they are what the present code makes, and what holds on them. */
import { readdirSync, statSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { atlasPrints } from '../../src/cli/atlas/build-atlas.ts';
import { atlasFile, atlasFolder, readAtlas } from '../../src/cli/atlas/files.ts';
import { soundSetup } from '../../src/cli/sound-setup.ts';
import {
  type Atlas,
  afterSeeing,
  type Belief,
  binsOf,
  causeShares,
  greedyValue,
  keyPlacesOf,
  type Observation,
  planOf,
  priorBelief,
  questionCost,
  questionsOf,
  rankChecks,
  samplesOf,
  sharesOf,
  smallCaseOf,
  solveCase,
  spansOf,
} from '../../src/diagnosis/index.ts';
import { faultsOf, findFault } from '../../src/faults/index.ts';
import { createRandom, nextUniform } from '../../src/numeric/index.ts';
import { library } from '../support/library.ts';

const LONG_MS = 240_000;
const SEED = 20261129;
const MOST_BYTES = 300_000;
/** Faults of each plant that are started once more. */
const AGAIN = 8;
const REBUILD = 'npm run flamewright -- atlas';
const folder = atlasFolder(fileURLToPath(new URL('../..', import.meta.url)));
const plants = library.plants.map(({ id }) => id);
const atlases = new Map(
  plants.map((plant) => {
    const atlas = readAtlas(atlasFile(folder, plant));
    if (atlas === null) throw new Error(`no atlas of ${plant}: ${REBUILD}`);
    return [plant, atlas] as const;
  }),
);

function atlasOf(plant: string): Atlas {
  return atlases.get(plant) as Atlas;
}

/** What the plants of a fault have at a key. */
function wordsOf(atlas: Atlas, fault: string, name: string): readonly string[] {
  const key = atlas.keys[keyPlacesOf(atlas).get(name) ?? -1];
  if (key === undefined) throw new Error(`no key ${name}`);
  const cause = atlas.causes.findIndex((one) => one.fault === fault);
  return [...key.column].flatMap((bin, p) =>
    atlas.causeOf[p] === cause ? [key.bins[bin] as string] : [],
  );
}

function planFor(plant: string) {
  const setup = soundSetup(library, plant);
  if (setup === null) throw new Error(`no sound start of ${plant}`);
  return planOf(setup);
}

describe('each shipped atlas', () => {
  it('is of a shipped plant, each of which has one, and is small enough to go with the page', () => {
    expect(readdirSync(folder).sort()).toEqual(plants.map((plant) => `${plant}.atlas`).sort());
    for (const plant of plants) {
      expect(atlasOf(plant).plant).toBe(plant);
      expect(statSync(atlasFile(folder, plant)).size).toBeLessThan(MOST_BYTES);
    }
  });

  it('has a fault that comes and goes come later too, where that takes the burner out of service', () => {
    const unneeded: (readonly string[])[] = [];
    for (const plant of plants) {
      const atlas = atlasOf(plant);
      const steps = wordsOf(atlas, 'airflow switch tube off', 'history|@lockout#step');
      expect(steps).toContain('drive to purge');
      expect(steps).toContain('modulation');
      unneeded.push(
        wordsOf(atlas, 'ignition relay not closing', 'watch one start|@standing#ends in'),
      );
    }
    // What a burner in service does not need is missed by no one.
    expect(findFault('ignition relay not closing')?.onsets).toContain('intermittent');
    expect(unneeded.flat().length).toBeGreaterThan(0);
    expect(unneeded.flat()).not.toContain('modulation');
  });

  it.each(plants)(
    'of the %s is what the present plant, checks and faults make',
    (plant) => {
      const plan = planFor(plant);
      const { whole } = atlasPrints(plan, samplesOf(plan, null));
      expect(whole, `the atlas is of another simulator; run: ${REBUILD}`).toBe(
        atlasOf(plant).fingerprint,
      );
    },
    LONG_MS,
  );

  // What an engine does to faults alone is in no sound plant.
  it.each(plants)(
    'of the %s has of some of its faults what they read now',
    (plant) => {
      const atlas = atlasOf(plant);
      const plan = planFor(plant);
      const spans = spansOf(atlas);
      const chance = createRandom(SEED, plant);
      const order = faultsOf(plan.setup.plant)
        .map((fault) => ({ fault, at: nextUniform(chance) }))
        .sort((a, b) => a.at - b.at);
      const other = order.slice(0, AGAIN).filter(({ fault }) => {
        const cause = atlas.causes.findIndex((one) => one.fault === fault.id);
        const first = spans[cause] ?? -1;
        const [sample] = samplesOf(plan, fault, 1);
        if (sample === undefined) return true;
        const bins = binsOf(atlas, sample.readings);
        // Whether a column moves counts only where it is the rule for a cause.
        return atlas.keys.some(
          ({ aspect, column }, key) => aspect !== 'steady' && column[first] !== bins[key],
        );
      });
      const changed = other.map(({ fault }) => fault.id);
      expect(changed, `faults run otherwise by now; run: ${REBUILD} --fresh`).toEqual([]);
    },
    LONG_MS,
  );
});

/** A place that a number of fast-check stands for. */
function pick<T>(all: readonly T[], number: number): T {
  return all[number % all.length] as T;
}

/** Ten keys as one particle has them. */
function someEvidence({ keys }: Atlas, particle: number, from: number): readonly Observation[] {
  return Array.from({ length: 10 }, (_, i) => (from + 97 * i) % keys.length).map((key) => ({
    key,
    bin: keys[key]?.column[particle] as number,
  }));
}

describe('on each shipped atlas', () => {
  it('a reading never sets back a cause that foretold it against one that did not, whatever came before', () => {
    fc.assert(
      fc.property(fc.nat(), fc.nat(), fc.nat(), fc.nat(), (which, who, what, before) => {
        const atlas = atlasOf(pick(plants, which));
        const spans = spansOf(atlas);
        const cause = who % atlas.causes.length;
        const first = spans[cause] as number;
        const questions = questionsFor(atlas);
        const question = pick(questions, what);
        fc.pre((question.answerOf[cause] as number) >= 0);
        const answer = question.column[first] as number;
        const isRival = atlas.causes.map((_, other) => {
          const to = spans[other + 1] as number;
          return !question.column.subarray(spans[other], to).includes(answer);
        });
        const belief = afterSeeing(
          priorBelief(atlas),
          atlas,
          someEvidence(atlas, before % atlas.causeOf.length, before),
        );
        const answered = question.keys.map((key) => ({
          key,
          bin: atlas.keys[key]?.column[first] as number,
        }));
        const rivalsAhead = (at: Belief) => {
          const shares = causeShares(atlas, sharesOf(at));
          return isRival.flatMap((rival, c) =>
            rival && (shares[c] as number) > (shares[cause] as number) ? [c] : [],
          );
        };
        const ahead = rivalsAhead(belief);
        for (const rival of rivalsAhead(afterSeeing(belief, atlas, answered))) {
          expect(ahead).toContain(rival);
        }
      }),
      { seed: SEED, numRuns: 300 },
    );
  });

  it(
    'greedy comes within a tenth of the optimum where that can be worked out, and is never better',
    () => {
      const all = plants.map((plant) => casesOf(plant, 6));
      const sumOf = (what: keyof (typeof all)[number]) =>
        all.reduce((sum, one) => sum + one[what], 0);
      expect(sumOf('cases')).toBeGreaterThan(10);
      expect(sumOf('greedy') / sumOf('optimum')).toBeLessThan(1.1);
    },
    LONG_MS,
  );
});

const known = new Map<Atlas, ReturnType<typeof questionsOf>>();
function questionsFor(atlas: Atlas): ReturnType<typeof questionsOf> {
  const questions = known.get(atlas) ?? questionsOf(atlas);
  known.set(atlas, questions);
  return questions;
}

/** Follows the greedy way with some plants of the atlas until what is left can be thought through. */
function casesOf(plant: string, tries: number) {
  const atlas = atlasOf(plant);
  const questions = questionsFor(atlas);
  const costOf = (question: (typeof questions)[number]) => questionCost(atlas, question);
  const chance = createRandom(SEED, `cases of ${plant}`);
  const sums = { cases: 0, greedy: 0, optimum: 0 };
  for (let i = 0; i < tries; i++) {
    const truth = Math.floor(nextUniform(chance) * atlas.causeOf.length);
    let belief = priorBelief(atlas);
    for (let asked = 0; asked < 6; asked++) {
      const small = smallCaseOf(atlas, belief, questions, costOf);
      const optimum = small === null ? null : solveCase(small);
      const least = optimum?.value([...(small?.weights.keys() ?? [])]) ?? 0;
      if (small !== null && least > 0) {
        const greedy = greedyValue(small);
        expect(greedy).toBeGreaterThan(least - 1e-9);
        sums.cases += 1;
        sums.greedy += greedy;
        sums.optimum += least;
      }
      const best = rankChecks(atlas, belief, questions, costOf)[0];
      if (best === undefined) break;
      const told = best.question.keys.map((key) => ({
        key,
        bin: atlas.keys[key]?.column[truth] as number,
      }));
      belief = afterSeeing(belief, atlas, told);
    }
  }
  return sums;
}
