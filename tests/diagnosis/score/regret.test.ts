import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  afterSeeing,
  type Case,
  type DecisionAct,
  priorBelief,
  questionCost,
  REDUNDANT_BITS,
  rankChecks,
  sharesOf,
} from '../../../src/diagnosis/index.ts';
import { ARRIVED, type Column, caseFrom, type Row, read, reasonOn } from './hand-made.ts';

const SEED = { seed: 20261129 };
/** Of different cost: 1, 2.5, 4, 8 and 36 minutes with surcharges. */
const CHECKS = [
  'listen|',
  'thermometer|a',
  'strobe|fan',
  'manometer|inlet',
  'look|strainer',
] as const;

interface Made {
  readonly columns: readonly Column[];
  readonly rows: readonly Row[];
}

function someCase(mostCauses: number, mostPlants: number): fc.Arbitrary<Made> {
  return fc
    .tuple(fc.integer({ min: 2, max: mostCauses }), fc.integer({ min: 1, max: CHECKS.length }))
    .chain(([causes, checks]) =>
      fc.record({
        columns: fc.constant(CHECKS.slice(0, checks).map((check) => ({ check }))),
        rows: fc.tuple(
          ...Array.from({ length: causes }, (_, cause) =>
            fc.record({
              fault: fc.constant(cause === 0 ? null : `fault ${cause}`),
              priorWeight: fc.integer({ min: 1, max: 9 }),
              plants: fc.array(
                fc.array(fc.constantFrom('low', 'in band', 'high'), {
                  minLength: checks,
                  maxLength: checks,
                }),
                { minLength: 1, maxLength: mostPlants },
              ),
            }),
          ),
        ),
      }),
    );
}

/** What each plant may be, by its own words, and what it weighs. */
interface Kind {
  readonly cause: number;
  readonly words: readonly string[];
  readonly weight: number;
}

function kindsLeft(theCase: Case, shares: Float64Array): readonly Kind[] {
  const most = Math.max(...shares);
  return [...shares.keys()]
    .filter((p) => (shares[p] ?? 0) > most / 1000)
    .map((p) => ({
      cause: theCase.atlas.causeOf[p] ?? 0,
      words: theCase.atlas.keys.map(({ bins, column }) => bins[column[p] ?? 0] ?? ''),
      weight: shares[p] ?? 0,
    }));
}

/** Cheapest expected way until nothing tells causes apart, by trying everything. */
function leastMinutes(
  kinds: readonly Kind[],
  costs: ReadonlyMap<number, number>,
  asked: readonly number[] = [],
): number {
  const open = [...costs.keys()].filter((k) => !asked.includes(k));
  const canBeTold = kinds.some((a) =>
    kinds.some((b) => a.cause !== b.cause && open.some((k) => a.words[k] !== b.words[k])),
  );
  if (!canBeTold) return 0;
  return Math.min(...open.map((k) => minutesBy(kinds, k, costs, asked)));
}

function minutesBy(
  kinds: readonly Kind[],
  k: number,
  costs: ReadonlyMap<number, number>,
  asked: readonly number[] = [],
  cost = costs.get(k) ?? 0,
): number {
  const all = kinds.reduce((sum, { weight }) => sum + weight, 0);
  return [...new Set(kinds.map(({ words }) => words[k]))].reduce((sum, word) => {
    const left = kinds.filter(({ words }) => words[k] === word);
    const share = left.reduce((a, { weight }) => a + weight, 0) / all;
    return sum + share * leastMinutes(left, costs, [...asked, k]);
  }, cost);
}

describe('regret of a check', () => {
  it('is exactly what it costs more than the best way, by trying every way there is', () => {
    fc.assert(
      fc.property(someCase(4, 2), fc.nat(), fc.nat(), ({ columns, rows }, which, earlier) => {
        const theCase = caseFrom(columns, rows);
        const k = which % columns.length;
        const before = earlier % columns.length;
        fc.pre(before !== k);
        const first = theCase.atlas.keys[before];
        const word = first?.bins[0] ?? '';
        const belief = afterSeeing(priorBelief(theCase.atlas), theCase.atlas, [
          { key: before, bin: 0 },
        ]);
        const costs = new Map<number, number>();
        for (const { question, bits, cost } of rankChecks(
          theCase.atlas,
          belief,
          theCase.questions,
          (one) => questionCost(theCase.atlas, one),
        )) {
          const [key = 0] = question.keys;
          if (key !== before && bits >= REDUNDANT_BITS) costs.set(key, cost);
        }
        const kinds = kindsLeft(theCase, sharesOf(belief));
        const check = columns[k]?.check ?? '';
        const cost = questionCost(theCase.atlas, { check, moment: 'lockout' });
        const expected = minutesBy(kinds, k, costs, [], cost) - leastMinutes(kinds, costs);

        const { decisions } = reasonOn(
          theCase,
          ARRIVED,
          read(first?.check ?? '', word),
          read(check, theCase.atlas.keys[k]?.bins[0] ?? ''),
        );
        expect(decisions[2]?.regretMinutes).toBeCloseTo(Math.max(0, expected), 9);
      }),
      { ...SEED, numRuns: 80 },
    );
  });

  it('is free of luck: another answer changes neither it nor the worth of the check', () => {
    fc.assert(
      fc.property(someCase(6, 3), fc.nat(), fc.nat(), ({ columns, rows }, which, other) => {
        const theCase = caseFrom(columns, rows);
        const k = which % columns.length;
        const { check = '', bins = [] } = theCase.atlas.keys[k] ?? {};
        const judged = [bins[0], bins[other % bins.length], 'never seen'].map((word) => {
          const { decisions } = reasonOn(theCase, ARRIVED, read(check, word ?? ''));
          const { regretMinutes, bits, redundant } = decisions[1] ?? {};
          return { regretMinutes, bits, redundant };
        });
        expect(judged[1]).toEqual(judged[0]);
        expect(judged[2]).toEqual(judged[0]);
      }),
      { ...SEED, numRuns: 50 },
    );
  });

  it('is nought for who does what is advised, however much is open', () => {
    fc.assert(
      fc.property(
        someCase(5, 3),
        // More kinds than can be thought through: the price of a bit decides.
        fc.constantFrom(0, 30),
        fc.array(fc.nat(), { minLength: 5, maxLength: 5 }),
        ({ columns, rows }, more, answers) => {
          const many = Array.from({ length: more }, (_, i): Row => {
            const words = columns.map((_, k) => ['low', 'in band', 'high'][(i + i * k) % 3] ?? '');
            return { fault: `more ${i}`, plants: [words] };
          });
          const theCase = caseFrom(columns, [...rows, ...many]);
          const acts: DecisionAct[] = [ARRIVED];
          for (const answer of answers) {
            const next = reasonOn(theCase, ...acts).next[0];
            if (next === undefined) break;
            const key = theCase.atlas.keys.find(({ check }) => check === next.check);
            acts.push(read(next.check, key?.bins[answer % key.bins.length] ?? '', next.moment));
          }
          for (const { regretMinutes } of reasonOn(theCase, ...acts).decisions) {
            expect(regretMinutes).toBeLessThan(1e-9);
          }
        },
      ),
      { ...SEED, numRuns: 30 },
    );
  });

  it('is never negative, and the path stays between nought and one', () => {
    fc.assert(
      fc.property(
        someCase(6, 3),
        fc.array(fc.tuple(fc.nat(6), fc.nat(9), fc.nat(9)), { maxLength: 12 }),
        ({ columns, rows }, picks) => {
          const theCase = caseFrom(columns, rows, ['fault 1']);
          const acts = picks.map(([kind, a, b]): DecisionAct => {
            const part = `fault ${a % 7}`;
            const { check = '', bins = [] } = theCase.atlas.keys[a % columns.length] ?? {};
            if (kind < 3) return read(check, bins[b % bins.length] ?? '');
            if (kind === 3) return { kind: 'suspect', ranked: [part, `fault ${b % 7}`] };
            if (kind === 4) return { kind: 'work', part, way: b % 2 === 0 ? 'replace' : 'clean' };
            if (kind === 5) return { kind: 'claim', part, why: [{ check, moment: 'lockout' }] };
            return { kind: 'ask', topic: part };
          });
          const { decisions, path, board } = reasonOn(theCase, ARRIVED, ...acts);
          for (const one of decisions) expect(one.regretMinutes).toBeGreaterThanOrEqual(0);
          expect(path.score).toBeGreaterThan(0);
          expect(path.score).toBeLessThanOrEqual(1);
          expect(board.every(({ share }) => share >= 0 && share <= 1 + 1e-9)).toBe(true);
        },
      ),
      { ...SEED, numRuns: 50 },
    );
  });

  it('is all that was spent on what tells nothing, and on what was known already', () => {
    const theCase = caseFrom(
      [{ check: 'manometer|inlet' }, { check: 'strobe|fan' }],
      [
        { fault: null, plants: [['in band', 'in band']] },
        { fault: 'a', plants: [['low', 'in band']] },
      ],
    );
    const { decisions } = reasonOn(
      theCase,
      ARRIVED,
      read('strobe|fan', 'in band'),
      read('manometer|inlet', 'low'),
      read('manometer|inlet', 'low'),
    );
    // Three minutes to connect and one for moving parts; three, four for opening and one for gas.
    expect(decisions[1]).toMatchObject({ redundant: true, bits: 0, minutes: 3, regretMinutes: 4 });
    expect(decisions[2]).toMatchObject({ redundant: false, regretMinutes: 0 });
    expect(decisions[3]).toMatchObject({ redundant: true, bits: 0, regretMinutes: 8 });
    expect(decisions[3]?.after).toEqual(decisions[2]?.after);
  });
});
