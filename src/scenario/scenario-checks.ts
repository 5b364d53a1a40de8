import type { PlantFile } from '../engine/index.ts';
import { type ActionSurroundings, checkActions, checkTimes } from './action-checks.ts';
import { ACTION_TYPES } from './action-schema.ts';
import { checkFault, type FaultLimits } from './fault-checks.ts';
import type { Issue } from './issue.ts';
import { issueAt } from './issue-at.ts';
import { nearest } from './nearest.ts';
import { phrase } from './phrase.ts';
import type { Path } from './place.ts';
import type { Loaded } from './read-yaml.ts';
import type { Scenario } from './scenario-schema.ts';
import { timedAction } from './timed-action.ts';

/** The other files a scenario leans on. A name that stands in a broken file counts as known. */
export interface ScenarioSurroundings {
  plant(id: string): PlantFile | null;
  readonly plantIds: readonly string[];
  readonly profileIds: readonly string[];
  readonly faults: readonly FaultLimits[];
}

const FILE_WORDS: Readonly<Record<string, string>> = { t: 'at', type: 'do' };

/** What the schema of one file cannot see: names of other files, of faults and cocks, order in time. */
export function checkScenario(
  { value: scenario, source }: Loaded<Scenario>,
  around: ScenarioSurroundings,
): Issue[] {
  const plant = around.plant(scenario.plant);
  const actionsAround: ActionSurroundings = {
    plant,
    faults: around.faults,
    // What the scenario does by itself need not be what it allows a learner.
    allow: ACTION_TYPES,
    untilS: scenario.until,
  };
  const known = (id: string | undefined, ids: readonly string[], kind: 'plant' | 'profile') => {
    if (id === undefined || ids.includes(id)) return [];
    const expected =
      ids.length === 0 ? phrase(`expected.no-${kind}`) : phrase(`expected.${kind}`, { known: ids });
    return [issueAt(source, [kind], 'unknown-name', expected, nearest(id, ids))];
  };
  const loadTimes = scenario.load.map(({ at }) => at);
  return [
    ...known(scenario.plant, around.plantIds, 'plant'),
    ...known(scenario.profile, around.profileIds, 'profile'),
    ...(plant === null ? [] : checkInitial(scenario, plant, source)),
    ...scenario.load.flatMap((_, i) =>
      checkTimes(loadTimes, i, source, ['load', i, 'at'], scenario.until),
    ),
    ...scenario.faults.flatMap((line, i) => {
      const places = { fault: ['faults', i, 'fault'], severity: ['faults', i, 'severity'] };
      return [
        ...checkFault(line.fault, line.severity, source, places, plant, around.faults),
        ...checkOnset(line.onset, source, ['faults', i, 'onset'], scenario.until),
        ...checkOnsetKind(line, source, ['faults', i, 'onset'], around.faults),
      ];
    }),
    ...checkActions(
      scenario.actions.map(timedAction),
      source,
      (i, key) => ['actions', i, FILE_WORDS[key] ?? key],
      actionsAround,
    ),
    ...checkTimes([scenario.expect.by], 0, source, ['expect', 'by'], scenario.until),
  ];
}

/** A steam vessel is told its pressure, or its water when it is cold; a hot-water one its water. */
function checkInitial(
  { initial }: Scenario,
  { vessel }: PlantFile,
  source: Loaded<Scenario>['source'],
): Issue[] {
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
  onset: Scenario['faults'][number]['onset'],
  source: Loaded<Scenario>['source'],
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
  { fault: name, onset }: Scenario['faults'][number],
  source: Loaded<Scenario>['source'],
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
