import type { DeskEntry } from '../../../machines/job/index.ts';
import { faultsFor, type Run, type RunSetup, type TimedAction } from '../../engine/index.ts';
import type { NeedlessWork } from './verdict.ts';

type Repair = Extract<TimedAction, { type: 'repair' }>;

/**
 * Repairs of parts with which nothing was wrong: no fault that still stood, or was to come, is ended
 * at the part. A blown fuse is a need of its own. Takes the run as far as it has to look at fuses.
 */
export function needlessWork(
  run: Pick<Run, 'advanceTo' | 'look' | 'parts'>,
  setup: RunSetup,
  brought: readonly string[],
  log: readonly TimedAction[],
  desk: readonly DeskEntry[],
): NeedlessWork[] {
  const fromS = desk.find(({ type }) => type === 'arrive')?.t ?? 0;
  const repairs = log.filter(
    (action): action is Repair => action.type === 'repair' && action.t >= fromS,
  );
  if (repairs.length === 0) return [];
  const parts = run.parts();
  let faults = faultsFor(setup.plant).filter(({ id }) => brought.includes(id));
  return repairs.flatMap(({ t, part, way }): NeedlessWork[] => {
    const needed = faults.some(({ remedies }) => remedies.some((one) => one.part === part));
    faults = faults.filter(
      ({ remedies }) => !remedies.some((one) => one.part === part && one.way === way),
    );
    const row = parts.find((one) => one.part === part);
    const minutes = row?.minutes[way];
    if (needed || way === 'report' || row === undefined || minutes === undefined) return [];
    if (part.endsWith(FUSE) && isAnyFuseBlown(run, t)) return [];
    return [{ t, part, way, minutes, cost: way === 'replace' ? row.cost : 0 }];
  });
}
const FUSE = ' fuse';

function isAnyFuseBlown(run: Pick<Run, 'advanceTo' | 'look'>, t: number): boolean {
  run.advanceTo(t);
  return Object.values(run.look('fuses')?.values ?? {}).some((whole) => whole === 0);
}
