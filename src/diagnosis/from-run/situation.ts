import type { Run } from '../../engine/index.ts';
import { AT_REST, ISOLATED, LOCKED_OUT, momentOf, STANDING } from '../observe/moment.ts';
import { checkName } from '../observe/reading.ts';
import type { Seen } from '../score/decision.ts';

/** How the plant stands, from when on, and what has been read of it. */
export interface Situation {
  readonly moment: string;
  readonly fromS: number;
  /** Hands were at the plant since it began. */
  disturbed: boolean;
  panelTold: boolean;
  historyTold: boolean;
}

const STOPPING: ReadonlySet<string> = new Set(['run down', 'post-purge']);
const WATCH = checkName('watch one start');

export function situationNow(run: Run, changedS: number): Situation {
  const { step, sinceS } = run.status();
  const words = run.look('panel switches')?.words ?? [];
  const moment = momentOf(step, {
    calledForHeat: !words.includes('look.panel.burner-off'),
    supplyOn: !words.includes('look.panel.isolator-off'),
  });
  return {
    moment,
    fromS: Math.max(sinceS, changedS),
    disturbed: false,
    panelTold: false,
    historyTold: false,
  };
}

export function lastLockoutS(run: Run): number {
  const last = run
    .events()
    .filter(({ type }) => type === 'lockout')
    .at(-1);
  return last?.t ?? -1;
}

/** A plant at rest, or on its way to it, is no start; what it shows goes with the next one. */
export function isWatching({ moment }: Seen): boolean {
  return moment === LOCKED_OUT || (isStep(moment) && !STOPPING.has(moment));
}

export function isOfTool({ readings }: Seen): boolean {
  return readings.some(({ check }) => check !== WATCH);
}

export function isStep(moment: string): boolean {
  return ![AT_REST, LOCKED_OUT, ISOLATED, STANDING].includes(moment);
}

export function endsIn(step: string): Seen {
  return { moment: STANDING, readings: [{ check: WATCH, aspect: 'ends in', value: step }] };
}
