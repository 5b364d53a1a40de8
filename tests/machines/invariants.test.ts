import { afterAll, describe, expect, it } from 'vitest';
import { transition } from 'xstate';
import {
  burnerMachine,
  CAUSES,
  guardsFor,
  readInput,
  type Timings,
  type Variant,
  WATCHES,
} from '../../machines/index.ts';
import { type Cube, contains, forEachLeaf } from './exploration/cubes.ts';
import { DEFECTS } from './exploration/defects.ts';
import { nameOf, type Snapshot, type Transition, WIDTH } from './exploration/evaluator.ts';
import { judge, type Verdict } from './exploration/judge.ts';
import { BAKERY, DAIRY, LAUNDRY, SCHOOL, timingsOf } from './practice.ts';

const LONG_MS = 600_000;
const WORDS = 2 ** WIDTH;
const plain = timingsOf('north-american-packaged-boiler');

/**
 * Every option of every axis at least once. Vent and kind of pilot change only what is driven,
 * so each case is judged with all of them.
 */
const CASES: readonly (readonly [string, Variant, Timings])[] = [
  ['dairy', DAIRY, plain],
  ['laundry', LAUNDRY, { ...plain, recyclesAllowed: 1 }],
  ['school', SCHOOL, plain],
  ['bakery', BAKERY, { ...plain, lostProofInPurge: 'lockout' }],
];
const verdicts = new Map<string, Verdict>();

function verdictOf(name: string): Verdict {
  let verdict = verdicts.get(name);
  if (verdict === undefined) {
    const [, variant, timings] = CASES.find(([one]) => one === name) as (typeof CASES)[number];
    verdict = judge(burnerMachine, variant, timings);
    verdicts.set(name, verdict);
  }
  return verdict;
}

describe.each(CASES)('%s', (name) => {
  it('is explored on every word of inputs in every configuration', { timeout: LONG_MS }, () => {
    const { counts } = verdictOf(name);
    expect(counts.pairs).toBe(counts.configurations * WORDS);
    expect(counts.configurations).toBeGreaterThan(200);
  });
  it.each([
    ['[IN-1] main valves only where they may be', 'IN-1'],
    ['[IN-2] spark only where it may be', 'IN-2'],
    ['[IN-3] no fuel without purge and valve proving', 'IN-3'],
    ['[IN-4] no fuel without flame but in a trial', 'IN-4'],
    ['[IN-5] vent and main valves never together', 'IN-5'],
    ['[IN-6] nothing but a good reset leaves lockout', 'IN-6'],
    ['[IN-7] no wait without a limit that says its name', 'IN-7'],
  ])('%s', { timeout: LONG_MS }, (_title, invariant) => {
    const broken = verdictOf(name).violations.filter((text) => text.startsWith(invariant));
    expect(broken).toEqual([]);
  });
});

describe('the exploration itself', () => {
  it('takes every transition that the charts hold', { timeout: LONG_MS }, () => {
    const taken = new Set(CASES.flatMap(([name]) => [...verdictOf(name).evaluator.taken]));
    expect(allTransitions().filter((one) => !taken.has(one))).toEqual([]);
  });

  it.each(['dairy', 'bakery'])(
    'claims of %s what the machine does, in whatever order its states were entered, seed 7',
    { timeout: LONG_MS },
    (name) => {
      const random = randomFrom(7);
      const one = <T>(all: readonly T[]): T => all[Math.floor(random() * all.length)] as T;
      const { configurations, evaluator } = verdictOf(name);
      for (let sample = 0; sample < 30; sample++) {
        const { snapshot, timers } = one(configurations);
        const timer = random() < 0.5 ? undefined : one(timers);
        const run =
          timer === undefined ? evaluator.inputs(snapshot) : evaluator.timer(snapshot, timer);
        const cubes: Cube[] = [];
        const claims: string[] = [];
        forEachLeaf(run, (outcome, cube) => {
          cubes.push(cube);
          claims.push(seen(outcome.snapshot));
        });
        for (let pick = 0; pick < 12; pick++) {
          const leaf = Math.floor(random() * cubes.length);
          const { mask, value } = cubes[leaf] as Cube;
          const word = value | (Math.floor(random() * WORDS) & ~mask);
          expect(cubes.filter((cube) => contains(cube, word))).toHaveLength(1);
          expect(seen(after(snapshot, timer?.event, word, random))).toBe(claims[leaf]);
        }
      }
    },
  );

  it('leaves out of a configuration nothing that a guard looks at', () => {
    const looked = new Set<string>();
    const watched = <T extends object>(target: T, prefix = ''): T =>
      new Proxy(target, {
        get(all, name) {
          const value: unknown = Reflect.get(all, name);
          looked.add(prefix + String(name));
          return name === 'variant' ? watched(value as object, 'variant.') : value;
        },
      });
    const contexts = Object.keys(WATCHES).flatMap((watch) =>
      [0, WORDS - 1].flatMap((word) =>
        [...CAUSES, null].map((cause) => ({ watch, word, cause, variant: BAKERY, timings: plain })),
      ),
    );
    const event = { type: 'trip', cause: 'flame lost in service', step: 'modulation' };
    for (const guard of Object.values(guardsFor(readInput))) {
      for (const context of contexts) guard({ context: watched(context), event } as never);
    }
    expect([...looked].sort()).toEqual([
      'cause',
      'recycles',
      'timings',
      'valvesProved',
      'variant',
      'variant.fan',
      'variant.ignition',
      'variant.proofOfClosure',
      'variant.valveProving',
      'watch',
      'word',
    ]);
  });

  it.each(DEFECTS)('[$breaks] refuses $name', { timeout: LONG_MS }, ({ breaks, machine }) => {
    const { violations } = judge(machine(), SCHOOL, plain, 1);
    expect(violations.map((text) => text.slice(0, 4))).toContain(breaks);
  });
});

afterAll(() => {
  for (const [name, { counts }] of verdicts) {
    const { configurations, leaves, pairs, timerPairs } = counts;
    console.info(
      `${name}: ${configurations} configurations, ${leaves} leaves stand for ${pairs} ` +
        `(configuration, word) pairs and ${timerPairs} (configuration, word, timer) triples`,
    );
  }
});

/** By the machine itself, unwatched, with its active states in any order. */
function after(
  { value, context }: Snapshot,
  timer: string | undefined,
  word: number,
  random: () => number,
): Snapshot {
  const told = timer === undefined ? context : { ...context, word };
  const state = burnerMachine.resolveState({ value, context: told } as never);
  const places = state._nodes.map((node) => ({ node, place: random() }));
  const shuffled = places.sort((a, b) => a.place - b.place).map(({ node }) => node);
  const event = timer === undefined ? { type: 'inputs', word } : { type: timer };
  const [next] = transition(burnerMachine, { ...state, _nodes: shuffled }, event as never);
  return next as unknown as Snapshot;
}

function seen({ _nodes, context }: Snapshot): string {
  const { cause, recycles, valvesProved, step } = context;
  return JSON.stringify([_nodes.map(({ id }) => id).sort(), cause, recycles, valvesProved, step]);
}

function allTransitions(): string[] {
  interface Node {
    readonly transitions: ReadonlyMap<string, readonly Transition[]>;
    readonly always?: readonly Transition[];
    readonly states: Readonly<Record<string, Node>>;
  }
  const visit = (node: Node): string[] => [
    ...[...node.transitions.values()].flat().map(nameOf),
    ...(node.always ?? []).map(nameOf),
    ...Object.values(node.states).flatMap(visit),
  ];
  return visit(burnerMachine.root as unknown as Node);
}

/** A small linear congruential generator: which words are tried is no secret, only fixed. */
function randomFrom(seed: number): () => number {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 2 ** 32;
  };
}
