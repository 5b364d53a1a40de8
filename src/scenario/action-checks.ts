import type { ActionType, PlantFile, TimedAction } from '../engine/index.ts';
import { type BenchKey, checkBenchAct } from './bench-act-checks.ts';
import { checkFault, type FaultLimits } from './fault-checks.ts';
import type { Issue } from './issue.ts';
import { issueAt } from './issue-at.ts';
import { nearest } from './nearest.ts';
import { phrase } from './phrase.ts';
import type { Path } from './place.ts';
import { cocksOf } from './plant-parts.ts';
import type { Source } from './read-source.ts';

export interface ActionSurroundings {
  readonly plant: PlantFile | null;
  readonly faults: readonly FaultLimits[];
  readonly allow: readonly ActionType[];
  readonly untilS: number;
}

type FieldKey = 'fault' | 'severity' | 'cock' | BenchKey;

/** Actions against the plant they are done on, the catalogue, and each other. */
export function checkActions(
  actions: readonly TimedAction[],
  source: Source,
  pathOf: (index: number, key: keyof TimedAction | FieldKey) => Path,
  around: ActionSurroundings,
): Issue[] {
  return actions.flatMap((action, i) => [
    ...checkTimes(
      actions.map(({ t }) => t),
      i,
      source,
      pathOf(i, 't'),
      around.untilS,
    ),
    ...checkAllowed(action, source, pathOf(i, 'type'), around.allow),
    ...checkFields(action, i, source, pathOf, around),
  ]);
}

/** @param times of the whole list, which must not go back; the entry `i` is judged */
export function checkTimes(
  times: readonly number[],
  i: number,
  source: Source,
  path: Path,
  untilS: number,
): Issue[] {
  const here = times[i] ?? 0;
  const before = times[i - 1] ?? 0;
  if (here < before) {
    return [issueAt(source, path, 'not-sorted', phrase('expected.later', { t: before }))];
  }
  if (here > untilS) {
    return [issueAt(source, path, 'out-of-range', phrase('expected.before-end', { t: untilS }))];
  }
  return [];
}

function checkAllowed(
  action: TimedAction,
  source: Source,
  path: Path,
  allow: readonly ActionType[],
): Issue[] {
  if (allow.includes(action.type)) return [];
  const expected =
    allow.length === 0
      ? phrase('expected.no-action')
      : phrase('expected.allowed-action', { known: allow });
  return [issueAt(source, path, 'not-allowed', expected)];
}

function checkFields(
  action: TimedAction,
  i: number,
  source: Source,
  pathOf: (index: number, key: FieldKey) => Path,
  { plant, faults }: ActionSurroundings,
): Issue[] {
  switch (action.type) {
    case 'insert-fault': {
      const places = { fault: pathOf(i, 'fault'), severity: pathOf(i, 'severity') };
      return checkFault(action.fault, action.severity, source, places, plant, faults);
    }
    case 'ramp-fault':
    case 'intermittent-fault': {
      const places = { fault: pathOf(i, 'fault'), severity: pathOf(i, 'severity') };
      // Down to nothing is a way to end a fault.
      const severity =
        action.type === 'ramp-fault' && action.severity === 0 ? null : action.severity;
      return checkFault(action.fault, severity, source, places, plant, faults);
    }
    case 'clear-fault': {
      const places = { fault: pathOf(i, 'fault'), severity: null };
      return checkFault(action.fault, null, source, places, plant, faults);
    }
    case 'turn-cock': {
      const cocks = plant === null ? [action.cock] : cocksOf(plant);
      if (cocks.includes(action.cock)) return [];
      const expected =
        cocks.length === 0
          ? phrase('expected.no-cock', { plant: plant?.id ?? '' })
          : phrase('expected.cock', { plant: plant?.id ?? '', known: cocks });
      const mend = nearest(action.cock, cocks);
      return [issueAt(source, pathOf(i, 'cock'), 'unknown-name', expected, mend)];
    }
    default:
      return plant === null ? [] : checkBenchAct(action, plant, source, (key) => pathOf(i, key));
  }
}
