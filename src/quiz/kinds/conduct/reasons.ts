/** Why a course is safe or not: what judging found, or what the acts of the run made true. */
import {
  type ConductFinding,
  INSIDE_PARTS,
  type JobTrace,
  jointWords,
  LOOKS_INSIDE,
} from '../../../bench/index.ts';
import type { Statement, Term } from '../../item/statement.ts';
import { stated, wordsOf } from './acts.ts';

type Act = JobTrace['acts'][number];
type Check = Extract<Act['action'], { type: 'check' }>;

const SMELT = 0.1;
const UNBURNT = 0.25;

export function whyUnsafe({ what, state }: ConductFinding): readonly Statement[] {
  return [
    stated(what),
    {
      code: 'quiz.conduct.state',
      with: { state: { is: 'statement', statement: stated(state) } },
    },
  ];
}

/** What made each act safe from a moment on, by the trace of it. */
export function whySafe(trace: JobTrace, fromS: number): readonly Statement[] {
  const said = trace.acts.flatMap((act, place) =>
    act.action.t < fromS ? [] : truthsOf(trace, act, place),
  );
  const all = [...said, ...startTruths(trace), ...handoverTruths(trace)];
  const seen = new Set<string>();
  return all.filter((one) => {
    const key = JSON.stringify(one);
    if (seen.has(key)) return false;
    seen.add(key);
    return true;
  });
}

function truthsOf(trace: JobTrace, act: Act, place: number): Statement[] {
  const { action, before, inside } = act;
  if (action.type === 'repair') return repairTruths(trace, act, place);
  if (action.type === 'reset' && action.pressed && before.lockout !== null) {
    return before.combustible >= UNBURNT
      ? [{ code: 'quiz.conduct.true.swept', with: { percent: percentOf(before.combustible) } }]
      : place > 0
        ? [{ code: 'quiz.conduct.true.looked' }]
        : [];
  }
  if (action.type === 'turn-cock' && before.smell >= SMELT) {
    return [{ code: 'quiz.conduct.true.no-spark', with: { percent: percentOf(before.smell) } }];
  }
  if (action.type !== 'check') return [];
  if (inside && LOOKS_INSIDE.has(action.place)) return [stillTruth(act)];
  return action.what.startsWith('multimeter')
    ? meterTruths(trace, act, action)
    : sprayTruths(trace, action);
}

function repairTruths({ acts, parts }: JobTrace, act: Act, place: number): Statement[] {
  const { action, before } = act;
  if (action.type !== 'repair') return [];
  const { part } = action;
  const row = parts.find((one) => one.part === part);
  const dead = acts
    .slice(0, place)
    .filter(({ action: one }) => one.type === 'check' && one.what === 'multimeter: volts')
    .at(-1);
  return [
    ...(row?.electrical === true && dead?.action.type === 'check'
      ? [
          {
            code: 'quiz.conduct.true.dead',
            with: {
              part,
              ...leadPlaces(dead.action),
              before: volts(dead.leads?.voltsBeforeIsolation ?? 0),
              now: volts(dead.leads?.volts ?? 0),
            },
          } satisfies Statement,
        ]
      : []),
    ...(row?.opens === 'gas'
      ? [{ code: 'quiz.conduct.true.shut', with: { part } } satisfies Statement]
      : []),
    ...(INSIDE_PARTS.has(part) && row?.electrical !== true && !before.bench.supplyOn
      ? [stillTruth(act)]
      : []),
  ];
}

function stillTruth({ before }: Act): Statement {
  return {
    code: 'quiz.conduct.true.still',
    with: { speed: { is: 'amount', value: Math.round(before.fanRpm), of: 'shaft speed' } },
  };
}

function meterTruths(trace: JobTrace, { leads, before }: Act, action: Check): Statement[] {
  const range = action.what.slice(action.what.indexOf(': ') + 2);
  if (range === 'volts') {
    return before.bench.supplyOn && trace.acts.every(({ action: one }) => one.type !== 'repair')
      ? [{ code: 'quiz.conduct.true.volts-range', with: { volts: volts(leads?.volts ?? 0) } }]
      : [];
  }
  return [
    {
      code: 'quiz.conduct.true.no-volts',
      with: { range, volts: volts(leads?.volts ?? 0) },
    },
  ];
}

function sprayTruths({ leakChecks, arrival }: JobTrace, { what, place, t }: Check): Statement[] {
  if (what !== 'leak spray') return [];
  const test = leakChecks.find((one) => one.place === place && one.t === t);
  if (test === undefined || test.underPressureS === null) return [];
  return [
    {
      code: 'quiz.conduct.true.tested',
      with: {
        joint: { is: 'statement', statement: stated(jointWords(place)) },
        pressure: { is: 'amount', value: arrival.gasPa[place] ?? 0, of: 'gas pressure' },
      },
    },
  ];
}

/** What stood when fuel was let in for the first time. */
function startTruths({ firings, acts }: JobTrace): Statement[] {
  const [first] = firings;
  if (first === undefined || acts.every(({ action }) => action.t > first.fromS)) return [];
  const touched = acts.find(
    ({ action }) =>
      action.type === 'jumper' || action.type === 'adjust' || action.type === 'stroke',
  )?.action;
  return touched === undefined ? [] : [{ code: `quiz.conduct.true.fired-${touched.type}` }];
}

function handoverTruths({ handovers, acts, firings }: JobTrace): Statement[] {
  if (handovers.length === 0) return [];
  const touched = acts
    .map(({ action }) => action)
    .find(({ type }) => type === 'jumper' || type === 'adjust' || type === 'stroke');
  if (touched?.type === 'stroke') {
    return [{ code: 'quiz.conduct.true.let-go', with: { servo: wordsOf(touched.servo) } }];
  }
  if (touched !== undefined && firings.length > 0) return [];
  if (touched !== undefined) return [{ code: `quiz.conduct.true.left-${touched.type}` }];
  return [{ code: 'quiz.conduct.true.left' }];
}

function leadPlaces({ place, other }: Check): Record<'place' | 'other', Term> {
  return {
    place: { is: 'place', place, tool: 'multimeter' },
    other: { is: 'place', place: other, tool: 'multimeter' },
  };
}

function volts(value: number): Term {
  return {
    is: 'statement',
    statement: { code: 'told.volts', with: { volts: Math.round(value) } },
  };
}

function percentOf(share: number): number {
  return Math.round(100 * share);
}
