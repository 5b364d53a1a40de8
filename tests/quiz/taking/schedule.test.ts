import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  dueTopics,
  type GivenAnswer,
  mergeAnswers,
  nextDueISO,
  type Schedule,
  topicMemories,
} from '../../../src/quiz/taking/index.ts';
import { DAY_MS, msOfISO } from '../../../src/quiz/taking/instant.ts';
import { answerOn, answerTo, atDay, bankOf, START_MS, shuffled } from './small-bank.ts';

/** Days from one answer to the next, whether it was right, how sure. */
const pasts = fc.array(
  fc.record({
    gap: fc.integer({ min: 1, max: 50 }),
    right: fc.boolean(),
    confidence: fc.constantFrom(35, 55, 75, 95),
  }),
  { maxLength: 8 },
) as fc.Arbitrary<{ gap: number; right: boolean; confidence: 35 | 55 | 75 | 95 }[]>;

function answersOf(past: readonly { gap: number; right: boolean; confidence: number }[]) {
  let day = 0;
  return past.map(({ gap, right, confidence }) => {
    day += gap;
    return answerOn('t', day, right, { confidence: confidence as GivenAnswer['confidence'] });
  });
}

/** Days from the start. */
function dueDay(answers: readonly GivenAnswer[], schedule: Schedule = {}): number {
  const [memory] = topicMemories(answers, schedule);
  return (msOfISO(memory?.dueISO ?? '') - START_MS) / DAY_MS;
}

describe('when a topic comes back', () => {
  it('sooner after a wrong answer than after a right one, and sooner after a right guess', () => {
    fc.assert(
      fc.property(pasts, fc.integer({ min: 1, max: 60 }), (past, gap) => {
        const answers = answersOf(past);
        const day = past.reduce((sum, one) => sum + one.gap, gap);
        const dueAfter = (right: boolean, confidence: 35 | 75 | 95) =>
          dueDay([...answers, answerOn('t', day, right, { confidence })]);
        expect(dueAfter(false, 75)).toBeLessThan(dueAfter(true, 35));
        expect(dueAfter(true, 35)).toBeLessThanOrEqual(dueAfter(true, 75));
        // Nothing is to be had by claiming to be surer, right or wrong.
        expect(dueAfter(true, 95)).toBe(dueAfter(true, 75));
        expect(dueAfter(false, 95)).toBe(dueAfter(false, 35));
      }),
      { seed: 62, numRuns: 60 },
    );
  });
  it('the next day at the earliest, and after half a year at the latest', () => {
    fc.assert(
      fc.property(pasts, (past) => {
        const answers = [...answersOf(past), answerOn('t', 500, true)];
        expect(dueDay(answers) - 500).toBeGreaterThan(0.5);
        expect(dueDay(answers) - 500).toBeLessThanOrEqual(180);
      }),
      { seed: 63, numRuns: 60 },
    );
    const always = [0, 3, 14, 60, 180, 350, 600].map((day) => answerOn('t', day, true));
    expect(dueDay(always) - 600).toBeGreaterThan(179);
  });
  it('after ever longer whiles where it is answered rightly each time', () => {
    let day = 0;
    const answers: GivenAnswer[] = [];
    const gaps: number[] = [];
    while (day < 200) {
      answers.push(answerOn('t', day, true));
      const due = Math.ceil(dueDay(answers));
      gaps.push(due - day);
      day = due;
    }
    expect(gaps).toEqual([...gaps].sort((a, b) => a - b));
    expect(gaps[0]).toBeLessThan(5);
    expect(gaps.length).toBeGreaterThan(3);
  });
  it('no later for having been answered again at once, when the reasons have just been told', () => {
    const wrong = answerOn('t', 0, false);
    expect(dueDay([wrong, answerOn('t', 0.01, true)])).toBe(dueDay([wrong]));
    expect(dueDay([wrong, answerOn('t', 1, true)])).toBeGreaterThan(dueDay([wrong]) + 1);
    const right = answerOn('t', 0, true);
    expect(dueDay([right, answerOn('t', 0.01, false)])).toBeLessThan(dueDay([right]));
  });
  it('before the end of a course, if there is a day left for it', () => {
    fc.assert(
      fc.property(pasts, fc.integer({ min: 1, max: 400 }), (past, endDay) => {
        const answers = [...answersOf(past), answerOn('t', 420 - endDay, true)];
        const day = Math.max(...answers.map(({ atISO }) => (msOfISO(atISO) - START_MS) / DAY_MS));
        const due = dueDay(answers, { courseEndISO: atDay(day + endDay) });
        if (endDay >= 2) expect(due).toBeLessThanOrEqual(day + endDay - 1);
        else expect(due).toBe(dueDay(answers));
        expect(due).toBeGreaterThan(day);
        expect(due).toBeLessThanOrEqual(dueDay(answers));
      }),
      { seed: 64, numRuns: 60 },
    );
    const answers = [answerOn('t', 10, true)];
    expect(dueDay(answers, { courseEndISO: atDay(5) })).toBe(dueDay(answers));
    expect(dueDay(answers, { courseEndISO: null })).toBe(dueDay(answers));
  });
});

describe('a week of practice', () => {
  const cards = bankOf(80);
  const answers = cards
    .filter((_, i) => i % 4 === 0)
    .map((card, i) => answerTo(card, i % 7, i % 4 !== 0));

  it('brings back every topic that was wrong, and of the right ones those of its first days', () => {
    const due = dueTopics(answers, atDay(8));
    for (const { topic, right, atISO } of answers) {
      if (!right) expect(due).toContain(topic);
      if (right && atISO < atDay(4)) expect(due).toContain(topic);
      if (right && atISO >= atDay(6)) expect(due).not.toContain(topic);
    }
    expect(dueTopics(answers, atDay(0))).toEqual([]);
  });
  it('tells what has waited longest first, and what is the next to come', () => {
    const dues = topicMemories(answers).map(({ dueISO }) => dueISO);
    const due = dueTopics(answers, atDay(30));
    const byTopic = new Map(topicMemories(answers).map((one) => [one.topic, one.dueISO]));
    const inTurn = due.map((topic) => byTopic.get(topic) as string);
    expect(inTurn).toEqual([...dues].sort());
    expect(nextDueISO(answers, atDay(0))).toBe([...dues].sort()[0]);
    const later = dues.filter((dueISO) => dueISO > atDay(3)).sort();
    expect(nextDueISO(answers, atDay(3))).toBe(later[0]);
    expect(nextDueISO(answers, atDay(30))).toBeNull();
    expect(nextDueISO([], atDay(0))).toBeNull();
  });
  it('is the same from two devices, in whichever order their lists are merged', () => {
    fc.assert(
      fc.property(fc.nat(1e6), fc.nat(answers.length), (seed, cut) => {
        const list = shuffled(answers, seed);
        const here = list.slice(0, cut);
        const there = list.slice(Math.max(0, cut - 5));
        const merged = mergeAnswers([...here, ...there]);
        expect(merged).toEqual(mergeAnswers([...there, ...here]));
        expect(topicMemories(merged)).toEqual(topicMemories(answers));
        expect(topicMemories(list)).toEqual(topicMemories(answers));
      }),
      { seed: 65, numRuns: 40 },
    );
  });
});
