/**
 * When a topic comes back: the free spaced repetition scheduler, version 6, over whole days and
 * without chance. Cards are made from the list of answers each time, so that two devices whose lists
 * are merged agree. The arithmetic of the package is not exact to the last bit on every engine; days
 * are whole, and nothing of a run rests on them.
 */
import { type Card, createEmptyCard, fsrs, type Grade, Rating } from 'ts-fsrs';
import type { GivenAnswer } from '../item/given-answer.ts';
import { answersInOrder, compareText } from './answers.ts';
import { DAY_MS, isoOfMs, msOfISO } from './instant.ts';

export interface Schedule {
  /** A course after which nothing is asked: what would come later comes a day before. */
  readonly courseEndISO?: string | null;
}

export interface TopicMemory {
  readonly topic: string;
  readonly lastISO: string;
  /** Asked last. */
  readonly lastItem: string;
  readonly lastRight: boolean;
  readonly dueISO: string;
}

/** Nine in ten are still known when they come back. */
const RETENTION = 0.9;
/** Who sees a burner once a year is asked twice as often as that. */
const MOST_DAYS = 180;
/** Who practises a little earlier in the day than last time finds it due. */
const EARLY_MS = 8 * 3_600_000;
/**
 * Whoever has just been told the reasons will be right; that says nothing of what stays. So soon
 * after the last answer that counted, a right one does not move the topic away.
 */
const STILL_FRESH_MS = 12 * 3_600_000;

const SCHEDULER = fsrs({
  request_retention: RETENTION,
  maximum_interval: MOST_DAYS,
  enable_fuzz: false,
  // Steps of minutes are for cards in a stack; a quiz asks on another day.
  enable_short_term: false,
});

/** What is known of each topic that was ever asked, in the order of topics. */
export function topicMemories(
  answers: readonly GivenAnswer[],
  { courseEndISO = null }: Schedule = {},
): TopicMemory[] {
  const byTopic = new Map<string, GivenAnswer[]>();
  for (const answer of answersInOrder(answers)) {
    const before = byTopic.get(answer.topic);
    if (before === undefined) byTopic.set(answer.topic, [answer]);
    else before.push(answer);
  }
  const endMs = courseEndISO === null ? null : msOfISO(courseEndISO);
  return [...byTopic]
    .sort(([a], [b]) => compareText(a, b))
    .map(([topic, ofTopic]) => {
      const last = ofTopic[ofTopic.length - 1] as GivenAnswer;
      return {
        topic,
        lastISO: last.atISO,
        lastItem: last.item,
        lastRight: last.right,
        dueISO: isoOfMs(dueOf(ofTopic, endMs)),
      };
    });
}

/** Topics that are due by now, the one that has waited longest first. */
export function dueTopics(
  answers: readonly GivenAnswer[],
  nowISO: string,
  schedule: Schedule = {},
): string[] {
  const nowMs = msOfISO(nowISO);
  return topicMemories(answers, schedule)
    .filter(({ dueISO }) => msOfISO(dueISO) <= nowMs)
    .sort((a, b) => compareText(a.dueISO, b.dueISO))
    .map(({ topic }) => topic);
}

/** When the next topic falls due that is not due yet; null where there is none. */
export function nextDueISO(
  answers: readonly GivenAnswer[],
  nowISO: string,
  schedule: Schedule = {},
): string | null {
  const nowMs = msOfISO(nowISO);
  const toCome = topicMemories(answers, schedule)
    .map(({ dueISO }) => dueISO)
    .filter((dueISO) => msOfISO(dueISO) > nowMs);
  return toCome.sort(compareText)[0] ?? null;
}

/**
 * Right and very sure is Good, not Easy. Easy would come back after weeks: whoever claims to be sure
 * and was lucky would lose the topic, and to claim it would pay. Right and unsure at heart was half a
 * guess: Hard. Wrong is Again, however sure.
 */
export function gradeOf({ right, confidence }: Pick<GivenAnswer, 'right' | 'confidence'>): Grade {
  if (!right) return Rating.Again;
  return confidence === 35 ? Rating.Hard : Rating.Good;
}

function dueOf(ofTopic: readonly GivenAnswer[], endMs: number | null): number {
  let card: Card | null = null;
  let countedMs = Number.NEGATIVE_INFINITY;
  for (const answer of ofTopic) {
    const atMs = msOfISO(answer.atISO);
    if (answer.right && atMs - countedMs < STILL_FRESH_MS) continue;
    card = SCHEDULER.next(card ?? createEmptyCard(atMs), atMs, gradeOf(answer)).card;
    countedMs = atMs;
  }
  if (card === null) return countedMs;
  const days = Math.min(MOST_DAYS, card.scheduled_days);
  const dueMs = countedMs + days * DAY_MS - EARLY_MS;
  return endMs === null ? dueMs : beforeEnd(dueMs, countedMs, endMs);
}

/** The last day of a course is for the exam. Who answered it after that is asked when it is due. */
function beforeEnd(dueMs: number, answeredMs: number, endMs: number): number {
  const lastMs = endMs - DAY_MS;
  return lastMs - answeredMs < STILL_FRESH_MS ? dueMs : Math.min(dueMs, lastMs);
}
