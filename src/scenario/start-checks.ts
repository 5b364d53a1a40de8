import type { PlantFile, TimedAction } from '../engine/index.ts';
import { type ActionSurroundings, checkActions, checkTimes } from './action-checks.ts';
import { ACTION_TYPES, type ScriptedAction } from './action-schema.ts';
import { MAX_RUN_S } from './bounds.ts';
import { checkFault, type FaultLimits } from './fault-checks.ts';
import type { Issue } from './issue.ts';
import { issueAt } from './issue-at.ts';
import { nearest } from './nearest.ts';
import { phrase } from './phrase.ts';
import type { Path } from './place.ts';
import type { Source } from './read-source.ts';
import type { Scenario } from './scenario-schema.ts';
import type { FaultLine } from './start-pieces.ts';
import { timedAction } from './timed-action.ts';

/** The other files that one leans on. A name that stands in a broken file counts as known. */
export interface Surroundings {
  plant(id: string): PlantFile | null;
  readonly plantIds: readonly string[];
  readonly profileIds: readonly string[];
  readonly faults: readonly FaultLimits[];
}

/** What a scenario, a job, a drill and a lesson all have. */
export type Start = Pick<Scenario, 'plant' | 'profile' | 'initial' | 'load' | 'faults' | 'actions'>;

/** The moments that the parts of a start may not lie beyond. */
export interface StartBounds {
  readonly actionsUntilS: number;
  readonly restUntilS: number;
}

const FILE_WORDS: Readonly<Record<string, string>> = { t: 'at', type: 'do' };

/** What the schema of one file cannot see: names of other files, of faults and cocks, order in time. */
export function checkStart(
  start: Start,
  source: Source,
  around: Surroundings,
  { actionsUntilS, restUntilS }: StartBounds = { actionsUntilS: MAX_RUN_S, restUntilS: MAX_RUN_S },
): Issue[] {
  const plant = around.plant(start.plant);
  const known = (id: string | undefined, ids: readonly string[], kind: 'plant' | 'profile') => {
    if (id === undefined || ids.includes(id)) return [];
    const expected =
      ids.length === 0 ? phrase(`expected.no-${kind}`) : phrase(`expected.${kind}`, { known: ids });
    return [issueAt(source, [kind], 'unknown-name', expected, nearest(id, ids))];
  };
  const loadTimes = start.load.map(({ at }) => at);
  return [
    ...known(start.plant, around.plantIds, 'plant'),
    ...known(start.profile, around.profileIds, 'profile'),
    ...(plant === null ? [] : checkInitial(start, plant, source)),
    ...start.load.flatMap((_, i) =>
      checkTimes(loadTimes, i, source, ['load', i, 'at'], restUntilS),
    ),
    ...start.faults.flatMap((line, i) => {
      const places = { fault: ['faults', i, 'fault'], severity: ['faults', i, 'severity'] };
      return [
        ...checkFault(line.fault, line.severity, source, places, plant, around.faults),
        ...checkOnset(line.onset, source, ['faults', i, 'onset'], restUntilS),
        ...checkOnsetKind(line, source, ['faults', i, 'onset'], around.faults),
      ];
    }),
    ...checkScripted(start.actions, 'actions', source, plant, around, actionsUntilS),
  ];
}

/** Acts as a file writes them; what it does by itself need not be what it allows a learner. */
export function checkScripted(
  actions: readonly ScriptedAction[],
  where: string | Path,
  source: Source,
  plant: PlantFile | null,
  { faults }: Surroundings,
  untilS: number,
): Issue[] {
  const around: ActionSurroundings = { plant, faults, allow: ACTION_TYPES, untilS };
  const path = typeof where === 'string' ? [where] : where;
  return checkActions(
    actions.map((action): TimedAction => timedAction(action)),
    source,
    (i, key) => [...path, i, FILE_WORDS[key] ?? key],
    around,
  );
}

/** A steam vessel is told its pressure, or its water when it is cold; a hot-water one its water. */
function checkInitial({ initial }: Start, { vessel }: PlantFile, source: Source): Issue[] {
  const { pressureBar, waterC, levelMm } = initial;
  if (vessel.kind === 'hot water') {
    const water = phrase('expected.initial.water');
    return [
      ...(pressureBar === undefined
        ? []
        : [issueAt(source, ['initial', 'pressureBar'], 'inconsistent', water)]),
      ...(levelMm === 0
        ? []
        : [
            issueAt(
              source,
              ['initial', 'levelMm'],
              'inconsistent',
              phrase('expected.initial.no-level'),
            ),
          ]),
    ];
  }
  if (pressureBar === undefined && waterC === undefined) {
    const path = ['initial', 'pressureBar'];
    return [issueAt(source, path, 'missing-key', phrase('expected.initial.steam'))];
  }
  if (pressureBar !== undefined && waterC !== undefined) {
    const path = ['initial', 'waterC'];
    return [issueAt(source, path, 'exclusive-keys', phrase('expected.initial.one'))];
  }
  return [];
}

function checkOnset(
  onset: FaultLine['onset'],
  source: Source,
  path: Path,
  untilS: number,
): Issue[] {
  if (onset === 'start') return [];
  if (Object.keys(onset).length !== 1) {
    const expected = phrase('expected.one-key-of', { keys: ['at', 'step', 'intermittent'] });
    return [issueAt(source, path, 'exclusive-keys', expected)];
  }
  if (onset.at !== undefined) return checkTimes([onset.at], 0, source, [...path, 'at'], untilS);
  if (onset.intermittent === undefined) return [];
  const from = [...path, 'intermittent', 'from'];
  return checkTimes([onset.intermittent.from], 0, source, from, untilS);
}

/** Some mechanisms do not come and go. */
function checkOnsetKind(
  { fault: name, onset }: FaultLine,
  source: Source,
  path: Path,
  faults: readonly FaultLimits[],
): Issue[] {
  const kinds = faults.find(({ id }) => id === name)?.onsets;
  const kind =
    onset === 'start' ? 'start' : Object.keys(onset)[0] === 'at' ? 'time' : Object.keys(onset)[0];
  if (kinds === undefined || kind === undefined || kinds.includes(kind)) return [];
  const words = kinds.map((one) => (one === 'time' ? 'at' : one));
  return [
    issueAt(source, path, 'not-applicable', phrase('expected.fault-onset', { kinds: words })),
  ];
}
