import { type ConductFinding, finding } from './finding.ts';
import { isolationOf } from './gas-places.ts';
import { leakTestOf } from './leak-tests.ts';
import { lookedAt } from './looked-at.ts';
import { cocksSaid, jointsSaid } from './plant-names.ts';
import type { Act, JobTrace, Span } from './trace-types.ts';

/** Repairs that leave the pipe closed. */
const CLOSED_WAYS = new Set(['report', 'reset']);
/** Looks for which the pipe is opened. */
const LOOKS_INTO_GAS = new Set(['strainer']);

/** SC-5 to SC-8: the gas train opened and closed again. */
export function judgeGasWork(trace: JobTrace): ConductFinding[] {
  return [...openingFindings(trace), ...startFindings(trace), ...handoverFindings(trace)];
}

export interface Opening {
  readonly part: string;
  readonly t: number;
  /** Only drawn tighter: nothing came apart, but it has to be tested. */
  readonly tightened: boolean;
  readonly act: Act;
}

/** Each time the learner had the gas train open, or drew a joint of it tighter. */
export function openingsOf({ acts, parts }: JobTrace): readonly Opening[] {
  const onGas = new Set(parts.flatMap(({ part, opens }) => (opens === 'gas' ? [part] : [])));
  return acts.flatMap((act): Opening[] => {
    const { action } = act;
    const { t } = action;
    if (action.type === 'repair' && onGas.has(action.part) && !CLOSED_WAYS.has(action.way)) {
      return [{ part: action.part, t, tightened: action.way === 'tighten', act }];
    }
    const seen = act.inside ? lookedAt(act) : null;
    return seen !== null && LOOKS_INTO_GAS.has(seen)
      ? [{ part: seen, t, tightened: false, act }]
      : [];
  });
}

function openingFindings(trace: JobTrace): ConductFinding[] {
  return openingsOf(trace).flatMap(({ part, t, tightened, act }) => {
    if (tightened) return [];
    const { bench } = act.before;
    const { shut, by, open } = isolationOf(trace.plant, part, bench.cocks);
    if (!shut) return [finding('SC-5', t, 'unsafe', 'gas-open', { part, cocks: cocksSaid(open) })];
    const loose = by.filter((cock) => !bench.locks.includes(cock));
    return loose.length === 0
      ? []
      : [finding('SC-6', t, 'careless', 'gas-unlocked', { part, cocks: cocksSaid(loose) })];
  });
}

/** Fuel let in though a joint could have been tested, and was not. */
function startFindings(trace: JobTrace): ConductFinding[] {
  const found: ConductFinding[] = [];
  const openings = openingsOf(trace);
  for (const [place, { part, t }] of openings.entries()) {
    const first = trace.firings.find(({ fromS }) => fromS > t);
    if (first === undefined) continue;
    // Opened again before fuel was let in: what is untested since then holds all that is.
    const again = openings.slice(place + 1);
    if (again.some((one) => one.part === part && one.t < first.fromS)) continue;
    const { untested } = leakTestOf(trace, part, t, first.fromS);
    const could = untested.filter(
      (node) => pressedFor(trace.pressed[node] ?? [], t, first.fromS) >= TEST_S,
    );
    if (could.length === 0) continue;
    found.push(
      finding('SC-7', first.fromS, 'unsafe', 'fired-untested', { part, joints: jointsSaid(could) }),
    );
  }
  return found;
}
/** It takes so long to wet a joint and watch it, s. Pressure that only valve proving brings is shorter. */
const TEST_S = 60;

function pressedFor(spans: readonly Span[], fromS: number, toS: number): number {
  return spans.reduce(
    (sum, span) => sum + Math.max(0, Math.min(span.toS, toS) - Math.max(span.fromS, fromS)),
    0,
  );
}

function handoverFindings(trace: JobTrace): ConductFinding[] {
  const handover = trace.handovers.at(-1);
  if (handover === undefined) return [];
  const last = new Map(
    openingsOf(trace)
      .filter(({ t }) => t <= handover.t)
      .map(({ part, t }) => [part, t]),
  );
  return [...last].flatMap(([part, t]) => {
    const { untested } = leakTestOf(trace, part, t, handover.t);
    return untested.length === 0
      ? []
      : [
          finding('SC-8', handover.t, 'unsafe', 'left-untested', {
            part,
            joints: jointsSaid(untested),
          }),
        ];
  });
}
