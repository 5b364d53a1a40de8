/**
 * Which items a quiz asks, and in which order. All is decided by the cards, the answers given so far
 * and the seed; in which order cards and answers come does not matter.
 */
import { compareText } from './answers.ts';
import { arrange } from './arrange.ts';
import { type Candidate, candidatesOf } from './candidates.ts';
import { type Choice, chooseBest, isFull } from './choice.ts';
import { chooseForExam } from './exam.ts';
import { QUIZ_SIZES, type QuizWanted } from './quiz-wanted.ts';
import { type TopicMemory, topicMemories } from './schedule.ts';

/** Success is likely, and there is something left to find out; as for exercises. */
const BEST_CHANCE = 0.7;
const MISFIT_OF_CHANCE = 2;
/** So much of a mixed quiz may be topics that are due: the rest goes on. */
const SHARE_OF_DUE = 0.4;
/** Of so many for each question the best is asked: or all who are new would be asked the same few. */
const DRAWN_OF_EACH = 22;

/** @returns ids of items in the order asked, each once; fewer than wanted where there are no more */
export function composeQuiz(wanted: QuizWanted): readonly string[] {
  const { mode, count = QUIZ_SIZES[mode], skill, due } = wanted;
  const all = candidatesOf(wanted);
  const choice: Choice = { most: Math.max(0, Math.floor(count)), chosen: [] };
  switch (mode) {
    case 'exam':
      chooseForExam(choice, all);
      break;
    case 'due':
      chooseTopics(choice, all, due, wanted);
      break;
    case 'got wrong':
      chooseTopics(choice, all, missedTopics(wanted), wanted);
      break;
    default: {
      const pool =
        mode === 'one skill' && skill !== undefined
          ? all.filter(({ card }) => card.skills.includes(skill))
          : all;
      const ofDue: Choice = { ...choice, most: Math.floor(choice.most * SHARE_OF_DUE) };
      chooseTopics(ofDue, pool, due, wanted);
      const drawn = drawnFrom(pool, DRAWN_OF_EACH * choice.most);
      while (!isFull(choice) && chooseBest(choice, drawn, misfitOfChance)) {
        // Each turn has added one.
      }
    }
  }
  return arrange(choice.chosen).map(({ card }) => card.id);
}

/** Some of them by lot, those that are fresh first. */
function drawnFrom(pool: readonly Candidate[], count: number): readonly Candidate[] {
  return [...pool].sort((a, b) => a.stale + a.lot - (b.stale + b.lot)).slice(0, count);
}

/** An item of each topic, by another than last time where there is one. */
function chooseTopics(
  choice: Choice,
  pool: readonly Candidate[],
  topics: readonly string[],
  { answers }: QuizWanted,
): void {
  const lastItems = new Map(topicMemories(answers).map(({ topic, lastItem }) => [topic, lastItem]));
  for (const topic of new Set(topics)) {
    const own = pool.filter(({ card }) => card.topic === topic);
    const others = own.filter(({ card }) => card.id !== lastItems.get(topic));
    chooseBest(choice, others.length > 0 ? others : own, misfitOfChance);
  }
}

/** Those last answered wrongly, the latest first. */
function missedTopics({ answers }: QuizWanted): readonly string[] {
  return topicMemories(answers)
    .filter(({ lastRight }) => !lastRight)
    .sort((a: TopicMemory, b: TopicMemory) => compareText(b.lastISO, a.lastISO))
    .map(({ topic }) => topic);
}

function misfitOfChance({ chance }: Candidate): number {
  return MISFIT_OF_CHANCE * Math.abs(chance - BEST_CHANCE);
}
