/** Results of a class as statements of the Experience API: who did what, with what result. */
import type { RecordFile } from '../file.ts';
import type { ItemsInWords } from '../item-in-words.ts';
import { idOfName } from '../name-id.ts';
import { answersToXapi } from '../xapi/answers-to-xapi.ts';
import { durationOf, headOfStatement, PLATFORM, verb } from '../xapi/parts.ts';
import {
  extension,
  iriPath,
  LANGUAGE,
  type XapiActivity,
  type XapiResult,
  type XapiSettings,
  type XapiStatement,
  type XapiVersion,
  type XapiWords,
} from '../xapi/statement.ts';
import type { ClassResult } from './class-result.ts';
import { inOrder } from './summary.ts';

const SIMULATION = 'http://adlnet.gov/expapi/activities/simulation';
const ASSESSMENT = 'http://adlnet.gov/expapi/activities/assessment';
const MEETING = 'http://adlnet.gov/expapi/activities/meeting';

export interface ClassXapiSettings {
  /** Under which seats, exercises and questions are named: an address of whoever holds the class. */
  readonly homepage: string;
  readonly version: XapiVersion;
  readonly classId: string;
  /** Of the class, as a report shows it. */
  readonly title: string;
  /** Nicknames leave with the results; else a seat is only a number. */
  readonly names: boolean;
}

export interface ClassXapiWords extends XapiWords {
  readonly exercises: Readonly<Record<ClassResult['what']['kind'], string>>;
  readonly classAbout: string;
}

/**
 * One statement an attempt: `completed`, or `attempted` where it was not taken to its end or nothing
 * could be made of it; a quiz has one for each answer besides. The same results give the same ids.
 */
export function classToXapi(
  results: readonly ClassResult[],
  settings: ClassXapiSettings,
  words: ClassXapiWords,
  items: ItemsInWords = new Map(),
): readonly XapiStatement[] {
  return [...results].sort(inOrder).flatMap((result) => {
    const own = settingsOf(result, settings);
    const answers = result.quiz?.answers ?? [];
    const [first] = answers;
    if (first === undefined) return [attemptOf(result, settings, own, words)];
    return answersToXapi(answers, own, items, words).map((statement) =>
      inClass(statement, settings, words),
    );
  });
}

export function classXapi(
  results: readonly ClassResult[],
  settings: ClassXapiSettings,
  words: ClassXapiWords,
  items: ItemsInWords = new Map(),
): RecordFile {
  const statements = classToXapi(results, settings, words, items);
  return {
    name: 'flamewright-class-xapi.json',
    type: 'application/json',
    data: `${JSON.stringify(statements, null, 2)}\n`,
  };
}

function settingsOf(
  { seat, nickname, finished, quiz }: ClassResult,
  { homepage, version, classId, names }: ClassXapiSettings,
): XapiSettings {
  const begun = quiz?.answers[0]?.quizStartedISO;
  return {
    homepage,
    version,
    actor: {
      homePage: homepage,
      name: `${classId}/${seat}`,
      ...(names && nickname !== '' ? { nickname } : {}),
    },
    finished: finished && begun !== undefined ? [begun] : [],
  };
}

function attemptOf(
  result: ClassResult,
  settings: ClassXapiSettings,
  own: XapiSettings,
  words: ClassXapiWords,
): XapiStatement {
  const { what, attempt, startedISO, handedInISO, finished, outcome } = result;
  const name = finished && outcome !== null ? 'completed' : 'attempted';
  const parts = [what.kind, what.id, startedISO, String(attempt)];
  const path = iriPath([own.actor.homePage, own.actor.name, ...parts]);
  return inClass(
    {
      ...headOfStatement(own, [name, ...parts]),
      verb: verb(name),
      object: exerciseActivity(result, settings, words),
      result: resultOf(result),
      context: {
        registration: idOfName(`${settings.homepage}/registrations/${path}`),
        platform: PLATFORM,
        language: LANGUAGE,
      },
      timestamp: handedInISO ?? startedISO,
    },
    settings,
    words,
  );
}

function resultOf(result: ClassResult): XapiResult {
  const { startedISO, handedInISO, outcome, finished, parts, conduct, remarks } = result;
  const success = successOf(result);
  return {
    ...(success === null ? {} : { success }),
    completion: finished,
    ...(handedInISO === null ? {} : durationOf(startedISO, handedInISO)),
    ...(outcome === null ? {} : { score: { scaled: outcome, raw: outcome, min: 0, max: 1 } }),
    extensions: {
      [extension('found')]: parts.found,
      [extension('path-score')]: parts.pathScore,
      [extension('minutes')]: parts.minutes,
      [extension('redundant-checks')]: parts.redundant,
      [extension('premature-works')]: parts.premature,
      [extension('conduct')]: conduct.map(({ rule, severity, t }) => ({ rule, severity, t })),
      [extension('remarks')]: remarks.map(({ code, where }) => ({ code, where })),
    },
  };
}

/** Of a job: the cause was come by, and nobody put in danger. Null where nothing is to be reached. */
function successOf({ what, outcome, parts, conduct }: ClassResult): boolean | null {
  if (outcome === null) return null;
  if (what.kind === 'drill') return outcome === 1;
  if (what.kind !== 'job' || parts.found === null) return null;
  return parts.found !== 'not found' && conduct.every(({ severity }) => severity !== 'unsafe');
}

function exerciseActivity(
  { what: { kind, id, title, plant } }: ClassResult,
  { homepage }: ClassXapiSettings,
  { exercises }: ClassXapiWords,
): XapiActivity {
  return {
    objectType: 'Activity',
    id: `${homepage}/exercises/${iriPath([kind, id])}`,
    definition: {
      type: kind === 'quiz' ? ASSESSMENT : SIMULATION,
      name: { [LANGUAGE]: title },
      description: { [LANGUAGE]: exercises[kind] },
      extensions: { [extension('plant')]: plant },
    },
  };
}

function inClass(
  statement: XapiStatement,
  { homepage, classId, title }: ClassXapiSettings,
  { classAbout }: ClassXapiWords,
): XapiStatement {
  const { context } = statement;
  const activity: XapiActivity = {
    objectType: 'Activity',
    id: `${homepage}/classes/${iriPath([classId])}`,
    definition: {
      type: MEETING,
      name: { [LANGUAGE]: title },
      description: { [LANGUAGE]: classAbout },
    },
  };
  return {
    ...statement,
    context: {
      ...context,
      contextActivities: { ...context.contextActivities, grouping: [activity] },
    },
  };
}
