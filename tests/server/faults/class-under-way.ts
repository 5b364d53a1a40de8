import { expect, onTestFinished } from 'vitest';
import type { ToClient } from '../../../src/classroom/index.ts';
import { createInstructor, type Instructor, joinClass, openClass } from './instructor.ts';
import { createLearner, type Learner } from './learner.ts';
import { openLine, pause } from './line.ts';

/** A class with everyone at work, for something to go wrong in. */
export interface ClassUnderWay {
  readonly learners: readonly Learner[];
  readonly instructor: Instructor;
  /** Goes on until so many entries more were taken and each learner was told of so many acts more. */
  goOn(entries: number, acts: number): Promise<void>;
  /** Everyone goes on working, and nobody waits for anything; until it holds. */
  workUntil(holds: () => boolean): Promise<void>;
  /** Lets everything come to rest, and holds what is there against what was promised. */
  expectPromisesKept(): Promise<void>;
}

type Seat = Awaited<ReturnType<typeof joinClass>>;

const ACT_EVERY_MS = 40;
/** Nobody goes on for ever while nothing is saved. */
const MOST_UNSAVED = 60;
const SAY_AFTER_MS = 60;

/**
 * @param urls where they come in; learners by turns, the instructor at the first
 * @param unruly chance by which pages say things twice and late, and where the class is opened
 */
export async function beginClass(
  urls: readonly (() => string)[],
  learnerCount: number,
  unruly: { readonly chance: () => number; readonly openAt: string } | null = null,
): Promise<ClassUnderWay> {
  const [first] = urls;
  if (first === undefined) throw new Error('no server');
  const door = (url: () => string): string => unruly?.openAt ?? url();
  const opened = await openClass(door(first));
  const instructor = createInstructor(unruly === null ? [first] : [first, first], opened);
  const places: { readonly url: () => string; readonly seated: Seat }[] = [];
  for (let i = 0; i < learnerCount; i++) {
    const url = urls[i % urls.length] ?? first;
    places.push({ url, seated: await joinClass(door(url), opened, `Learner ${i + 1}`) });
  }
  const learners = places.map(({ url, seated }) => createLearner(url, seated, unruly?.chance));
  onTestFinished(async () => {
    instructor.close();
    await Promise.all(learners.map((learner) => learner.stop()));
  });
  await instructor.say({ type: 'begin' });

  const expectNothingBroken = (): void =>
    expect([instructor, ...learners].flatMap(({ broken }) => broken)).toEqual([]);

  async function workUntil(holds: () => boolean): Promise<void> {
    while (!holds()) {
      expectNothingBroken();
      for (const { acts, saved, act } of learners) if (acts.length < saved() + MOST_UNSAVED) act();
      await pause(ACT_EVERY_MS);
    }
  }

  let hints = 0;
  return {
    learners,
    instructor,
    workUntil,
    async goOn(entries, acts) {
      const savedAtFirst = learners.map(({ saved }) => saved());
      let taken = 0;
      const saying = (async () => {
        while (taken < entries) {
          await instructor.say({ type: 'hint', to: 'all', text: `hint ${++hints}` });
          taken++;
          await pause(SAY_AFTER_MS);
        }
      })();
      await workUntil(
        () =>
          taken >= entries &&
          learners.every(({ saved }, i) => saved() >= (savedAtFirst[i] ?? 0) + acts),
      );
      await saying;
    },
    async expectPromisesKept() {
      const last = Math.max(...instructor.said.keys());
      const isAtRest = (): boolean =>
        learners.every(({ saved, acts }) => saved() === acts.length) &&
        [instructor, ...learners].every(({ entries }) => entries.last() >= last);
      while (!isAtRest()) await pause(ACT_EVERY_MS);
      expectNothingBroken();

      const all = instructor.entries.all();
      // One number each, in order, nothing missing: and each thing said is there once.
      expect(all.map(({ n }) => n)).toEqual(all.map((_, i) => i + 1));
      const texts = all.slice(1).map(({ n: _, atMs: __, ...spoken }) => JSON.stringify(spoken));
      expect([...texts].sort()).toEqual([...instructor.said.values()].sort());
      for (const [n, text] of instructor.said) expect(texts[n - 2]).toBe(text);
      for (const { entries } of learners) expect(entries.all()).toEqual(all);

      for (const [i, learner] of learners.entries()) {
        const { url, seated } = places[i] as (typeof places)[number];
        const welcome = await comeInAnew(url, seated);
        expect(welcome.entries).toEqual(all);
        expect(welcome.work?.acts).toEqual(learner.acts);
      }
    },
  };
}

/** As another device would, with nothing in hand. */
function comeInAnew(
  url: () => string,
  seated: { readonly class: string; readonly seat: number; readonly token: string },
): Promise<ToClient['welcome']> {
  return new Promise((resolve) => {
    const { seat, token } = seated;
    const line = openLine({
      url,
      hello: () => ({ role: 'seat', class: seated.class, seat, token, since: 0 }),
      welcome(message) {
        line.close();
        resolve(message);
      },
      entry: () => undefined,
    });
  });
}
