/** Cards and answers without a plant behind them: what taking a quiz goes by. */
import type { Skill } from '../../../machines/index.ts';
import { SKILL_ORDER } from '../../../src/diagnosis/mastery/index.ts';
import { createRandom, nextUniform } from '../../../src/numeric/index.ts';
import { type GivenAnswer, ITEM_KINDS, type ItemCard } from '../../../src/quiz/index.ts';
import { DAY_MS, isoOfMs, msOfISO } from '../../../src/quiz/taking/instant.ts';

export const START_MS = msOfISO('2026-03-02T09:00:00Z');

export function atDay(days: number): string {
  return isoOfMs(START_MS + Math.round(days * DAY_MS));
}

/** @param ofTopic how many items ask for the same thing */
export function bankOf(count: number, ofTopic = 4, seed = 1): ItemCard[] {
  const random = createRandom(seed, 'bank');
  return Array.from({ length: count }, (_, i) => {
    const group = Math.floor(i / ofTopic);
    const kind = ITEM_KINDS[group % ITEM_KINDS.length] as ItemCard['kind'];
    const isChoice = kind !== 'order' && kind !== 'calculation';
    return {
      id: `${kind}/${i}`,
      kind,
      plant: ['dairy', 'laundry', 'school'][i % 3] as string,
      topic: `topic ${group}`,
      skills: [SKILL_ORDER[group % SKILL_ORDER.length] as Skill],
      difficulty: 4.5 * nextUniform(random) - 2.5,
      place: isChoice ? Math.floor(3 * nextUniform(random)) : null,
    };
  });
}

export function answerTo(
  card: Omit<ItemCard, 'place'>,
  day: number,
  right: boolean,
  more: Partial<GivenAnswer> = {},
): GivenAnswer {
  const { id, kind, plant, topic, skills, difficulty } = card;
  return {
    item: id,
    kind,
    plant,
    topic,
    skills,
    difficulty,
    mode: 'standard',
    quizStartedISO: atDay(Math.floor(day)),
    atISO: atDay(day),
    response: { is: 'choice', option: right ? 0 : 1 },
    right,
    confidence: 75,
    ...more,
  };
}

/** An answer by topic alone, each to an item of its own. */
export function answerOn(
  topic: string,
  day: number,
  right: boolean,
  more: Partial<GivenAnswer> = {},
): GivenAnswer {
  const card = { id: `${topic}/${day}`, kind: 'cause', plant: 'dairy', topic } as const;
  return answerTo({ ...card, skills: ['air'], difficulty: 0 }, day, right, more);
}

export function shuffled<T>(list: readonly T[], seed: number): T[] {
  const random = createRandom(seed, 'shuffle');
  return list
    .map((one) => ({ one, lot: nextUniform(random) }))
    .sort((a, b) => a.lot - b.lot)
    .map(({ one }) => one);
}
