import { beforeAll, describe, expect, it } from 'vitest';
import { judgeConduct } from '../../../src/bench/index.ts';
import { createRun } from '../../../src/engine/index.ts';
import { en } from '../../../src/i18n/en/index.ts';
import { addMessages, sayMessage } from '../../../src/i18n/index.ts';
import {
  type ChoiceItem,
  lintItem,
  lintWords,
  type QuizPlant,
  setupOfRun,
} from '../../../src/quiz/index.ts';
import {
  type ConductCourses,
  conductCourses,
  conductMaker,
} from '../../../src/quiz/kinds/conduct/index.ts';
import type { JudgedCourse } from '../../../src/quiz/kinds/conduct/judge-course.ts';
import { LINT_VOCABULARY, namesOfPlant, wordItem } from '../../../src/wording/index.ts';
import { QUIZ_PLANTS, quizPlant } from '../quiz-plants.ts';

addMessages(en);

const SEEDS = Array.from({ length: 14 }, (_, i) => 9000 + i);

interface Made {
  readonly seed: number;
  readonly item: ChoiceItem;
  readonly courses: ConductCourses;
}

const made = new Map<string, readonly Made[]>();

beforeAll(() => {
  for (const id of QUIZ_PLANTS) {
    const plant = quizPlant(id);
    made.set(
      id,
      SEEDS.flatMap((seed): Made[] => {
        const given = conductMaker.make(plant, seed);
        if (!given.ok || given.item.answer !== 'choice') return [];
        const courses = conductCourses(plant, seed);
        return courses.ok ? [{ seed, item: given.item, courses }] : [];
      }),
    );
  }
}, 300_000);

/** What judging says of a course, run anew from the situation of the item. */
function judgedAnew(plant: QuizPlant, { run }: ChoiceItem, { laid }: JudgedCourse) {
  if (run === null) throw new Error('no situation');
  return judgeConduct(setupOfRun(plant.plan, run), laid.log, laid.desk, laid.untilS);
}

describe.each(QUIZ_PLANTS)('items about conduct at the %s', (id) => {
  const all = () => made.get(id) ?? [];

  it('come from most seeds, and about many rules', () => {
    expect(all().length).toBeGreaterThan(SEEDS.length / 3);
    expect(new Set(all().map(({ item }) => item.topic)).size).toBeGreaterThan(3);
  });

  it('have a key in which judging finds nothing, and distractors with the one finding they are told for', () => {
    const plant = quizPlant(id);
    for (const { item, courses } of all()) {
      const key = item.options[item.key];
      expect(key?.atS).toBeNull();
      expect(judgedAnew(plant, item, courses.safe)).toEqual([]);
      const others = item.options.filter((option) => option !== key);
      expect(others).toHaveLength(2);
      others.forEach((option, place) => {
        const found = judgedAnew(plant, item, courses.unsafe[place] as JudgedCourse);
        expect(found).toHaveLength(1);
        expect(found[0]?.t).toBe(option.atS);
        expect(option.why[0]?.code).toBe(found[0]?.what.code);
      });
      const rules = courses.unsafe.map(({ findings }) => `conduct/${findings[0]?.rule}`);
      expect(rules).toContain(item.topic);
    }
  });

  it('would be refused with key and distractor swapped', () => {
    const plant = quizPlant(id);
    const [one] = all();
    if (one === undefined) throw new Error('no item');
    expect(judgedAnew(plant, one.item, one.courses.unsafe[0] as JudgedCourse)).not.toEqual([]);
  });

  it('carry each course as a run of its own, which does what the course did', () => {
    for (const { item, courses } of all()) {
      const inOrder = [...courses.unsafe];
      inOrder.splice(item.key, 0, courses.safe);
      item.options.forEach(({ run, atS }, place) => {
        const { laid } = inOrder[place] as JudgedCourse;
        expect(run?.actions).toEqual([...(item.run?.actions ?? []), ...laid.log]);
        expect(run?.untilS).toBe(laid.untilS);
        expect(atS ?? 0).toBeLessThanOrEqual(run?.untilS ?? 0);
      });
    }
  });

  it('are sound by their structure and in words, with a caution and the reasons of judging', () => {
    const plant = quizPlant(id);
    const names = namesOfPlant(plant.sound.plant, createRun(plant.sound).channels);
    for (const { item, courses } of all()) {
      const worded = wordItem(item, names);
      expect(lintItem(item)).toEqual([]);
      expect(lintWords(worded, LINT_VOCABULARY)).toEqual([]);
      expect(worded.caution).toMatch(/local codes.*instructions.*licence/);
      if (worded.answer !== 'choice') throw new Error('no choice');
      const wrong = worded.options.filter((_, place) => place !== worded.key);
      wrong.forEach(({ why }, place) => {
        const [found] = (courses.unsafe[place] as JudgedCourse).findings;
        if (found === undefined) throw new Error('no finding');
        expect(why.join(' ')).toContain(sayMessage(found.state));
      });
    }
  });
});

it('the same seed gives the same item, made alone or behind others', () => {
  for (const id of QUIZ_PLANTS) {
    const last = made.get(id)?.at(-1);
    if (last === undefined) throw new Error('no item');
    const again = conductMaker.make(quizPlant(id), last.seed);
    expect(JSON.stringify(again)).toBe(JSON.stringify({ ok: true, item: last.item }));
  }
});

it('plants together ask about at least twelve of the rules', () => {
  const rules = new Set(
    [...made.values()].flatMap((items) =>
      items.flatMap(({ courses }) => courses.unsafe.map(({ findings }) => findings[0]?.rule)),
    ),
  );
  expect(rules.size).toBeGreaterThanOrEqual(12);
});
