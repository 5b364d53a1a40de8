import type { Skill } from '../../../machines/job/index.ts';
import { SKILL_ORDER } from '../../diagnosis/mastery/index.ts';
import type { GivenAnswer } from '../item/given-answer.ts';
import type { ItemCard } from '../item/item.ts';
import { msOfISO } from './instant.ts';
import { type Schedule, topicMemories } from './schedule.ts';

/** Topics of one skill; the four add up to `topics`. */
export interface TopicsOfSkill {
  readonly skill: Skill;
  readonly topics: number;
  /** Last answered rightly and not due yet. */
  readonly known: number;
  readonly due: number;
  /** Last answered wrongly, and coming back soon. */
  readonly missed: number;
  readonly fresh: number;
}

/** How many topics of each skill are known, in the order of skills. A topic of several is one of each. */
export function masteryOfTopics(
  cards: readonly ItemCard[],
  answers: readonly GivenAnswer[],
  nowISO: string,
  schedule: Schedule = {},
): TopicsOfSkill[] {
  const nowMs = msOfISO(nowISO);
  const words = new Map<string, 'known' | 'due' | 'missed'>();
  for (const { topic, lastRight, dueISO } of topicMemories(answers, schedule)) {
    words.set(topic, msOfISO(dueISO) <= nowMs ? 'due' : lastRight ? 'known' : 'missed');
  }
  return SKILL_ORDER.map((skill) => {
    const topics = new Set(
      cards.filter(({ skills }) => skills.includes(skill)).map(({ topic }) => topic),
    );
    const counts = { known: 0, due: 0, missed: 0, fresh: 0 };
    for (const topic of topics) counts[words.get(topic) ?? 'fresh'] += 1;
    return { skill, topics: topics.size, ...counts };
  });
}
