import { checkTimes } from './action-checks.ts';
import type { Issue } from './issue.ts';
import type { Loaded } from './read-yaml.ts';
import type { Scenario } from './scenario-schema.ts';
import { checkStart, type Surroundings } from './start-checks.ts';

export function checkScenario(
  { value: scenario, source }: Loaded<Scenario>,
  around: Surroundings,
): Issue[] {
  const bounds = { actionsUntilS: scenario.until, restUntilS: scenario.until };
  return [
    ...checkStart(scenario, source, around, bounds),
    ...checkTimes([scenario.expect.by], 0, source, ['expect', 'by'], scenario.until),
  ];
}
