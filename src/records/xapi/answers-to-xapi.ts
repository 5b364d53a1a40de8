/** Answers as statements of the Experience API: who did what, with what result. */
import type { GivenAnswer } from '../../quiz/taking/index.ts';
import type { RecordFile } from '../file.ts';
import type { ItemsInWords } from '../item-in-words.ts';
import { idOfName } from '../name-id.ts';
import { activityOf, responseText } from './interaction.ts';
import { durationOf, headOfStatement, PLATFORM, verb } from './parts.ts';
import {
  extension,
  iriPath,
  LANGUAGE,
  type XapiActivity,
  type XapiSettings,
  type XapiStatement,
  type XapiWords,
} from './statement.ts';

const ASSESSMENT = 'http://adlnet.gov/expapi/activities/assessment';

/**
 * One `answered` for each answer, then one for each quiz: `completed` where it was taken to its end,
 * else `scored`. The id of a statement follows from who answered what and when, so that whoever
 * takes in the same answers twice counts them once.
 */
export function answersToXapi(
  answers: readonly GivenAnswer[],
  settings: XapiSettings,
  items: ItemsInWords,
  words: XapiWords,
): readonly XapiStatement[] {
  const quizzes = new Map<string, GivenAnswer[]>();
  for (const answer of answers) {
    const known = quizzes.get(answer.quizStartedISO);
    if (known === undefined) quizzes.set(answer.quizStartedISO, [answer]);
    else known.push(answer);
  }
  return [
    ...answers.map((answer) => answered(answer, settings, items, words)),
    ...[...quizzes.values()].map((quiz) => quizStatement(quiz, settings, words)),
  ];
}

export function resultsXapi(
  answers: readonly GivenAnswer[],
  settings: XapiSettings,
  items: ItemsInWords,
  words: XapiWords,
): RecordFile {
  const statements = answersToXapi(answers, settings, items, words);
  return {
    name: 'flamewright-answers-xapi.json',
    type: 'application/json',
    data: `${JSON.stringify(statements, null, 2)}\n`,
  };
}

function answered(
  answer: GivenAnswer,
  settings: XapiSettings,
  items: ItemsInWords,
  words: XapiWords,
): XapiStatement {
  const { item, atISO, response, right, confidence, quizStartedISO } = answer;
  const score = right ? 1 : 0;
  return {
    ...headOfStatement(settings, ['answered', item, quizStartedISO, atISO]),
    verb: verb('answered'),
    object: activityOf(answer, items.get(item), settings.homepage, words),
    result: {
      success: right,
      completion: true,
      response: responseText(response),
      score: { scaled: score, raw: score, min: 0, max: 1 },
      extensions: { [extension('confidence')]: confidence },
    },
    context: {
      ...contextOf(answer, settings),
      contextActivities: { parent: [quizActivity(answer, settings, words)] },
      extensions: {
        [extension('difficulty')]: answer.difficulty,
        [extension('skills')]: answer.skills,
      },
    },
    timestamp: atISO,
  };
}

function quizStatement(
  quiz: readonly GivenAnswer[],
  settings: XapiSettings,
  words: XapiWords,
): XapiStatement {
  const last = quiz.reduce((late, one) => (one.atISO > late.atISO ? one : late));
  const { quizStartedISO } = last;
  const raw = quiz.filter(({ right }) => right).length;
  const max = quiz.length;
  const isFinished = settings.finished.includes(quizStartedISO);
  const name = isFinished ? 'completed' : 'scored';
  return {
    // With the count: of a quiz that goes on, a later one says more.
    ...headOfStatement(settings, [name, quizStartedISO, last.atISO, String(max)]),
    verb: verb(name),
    object: quizActivity(last, settings, words),
    result: {
      ...(isFinished ? { completion: true } : {}),
      ...durationOf(quizStartedISO, last.atISO),
      score: { scaled: raw / max, raw, min: 0, max },
    },
    context: contextOf(last, settings),
    timestamp: last.atISO,
  };
}

function contextOf({ quizStartedISO }: GivenAnswer, { actor, homepage }: XapiSettings) {
  const path = iriPath([actor.homePage, actor.name, quizStartedISO]);
  return {
    registration: idOfName(`${homepage}/registrations/${path}`),
    platform: PLATFORM,
    language: LANGUAGE,
  };
}

function quizActivity(
  { mode }: GivenAnswer,
  { homepage }: XapiSettings,
  { quizzes, about }: XapiWords,
): XapiActivity {
  return {
    objectType: 'Activity',
    id: `${homepage}/quizzes/${mode.replaceAll(' ', '-')}`,
    definition: {
      type: ASSESSMENT,
      name: { [LANGUAGE]: quizzes[mode] },
      description: { [LANGUAGE]: about },
    },
  };
}
