/** Where a scene begins: at rest, in a step, in service, or in a lockout that a fault brought. */
import { createRun, type FaultOrder, faultsFor, type TimedAction } from '../../../engine/index.ts';
import type { RandomState } from '../../../numeric/index.ts';
import type { ItemRun } from '../../item/item.ts';
import { pickTolerances } from '../../item/other-plant.ts';
import { setupOfRun } from '../../item/setup-of-run.ts';
import type { Statement } from '../../item/statement.ts';
import type { PlantFacts } from './plant-facts.ts';

/** Called for and not: the start is taken back before anything moves. */
const CALLED_OFF_AFTER_S = 1;
const AT_REST_AFTER_S = 30;

export interface Situation {
  readonly run: ItemRun;
  readonly tells: Statement;
  readonly shows: boolean;
}
export interface LockedOut extends Situation {
  readonly fault: string;
  readonly lockoutS: number;
  readonly cause: string;
  readonly step: string;
  /** Unburnt gas in the furnace on arrival, over its lower flammability limit. */
  readonly unburnt: number;
  /** When each step of this start began, s. */
  readonly stepsS: Readonly<Record<string, number>>;
}

/** The burner switched off at its switch, nothing moving. */
export function atRest(
  facts: PlantFacts,
  chance: RandomState,
  faults: readonly FaultOrder[] = [],
  untilS = facts.callS + AT_REST_AFTER_S,
): Situation {
  const calledOff: TimedAction = {
    t: facts.callS + CALLED_OFF_AFTER_S,
    type: 'call-for-heat',
    on: false,
  };
  return {
    run: {
      plant: facts.plant.id,
      tolerances: pickTolerances(chance),
      faults,
      actions: [calledOff],
      untilS,
    },
    tells: { code: 'quiz.conduct.tells.rest', with: { plant: titleOf(facts) } },
    shows: false,
  };
}

/** A sound start, so long after a step of it began; null where it has no such step. */
export function inStep(
  facts: PlantFacts,
  chance: RandomState,
  step: string,
  afterS: number,
): Situation | null {
  const fromS = facts.stepsS[step];
  if (fromS === undefined) return null;
  return {
    run: {
      plant: facts.plant.id,
      tolerances: pickTolerances(chance),
      faults: [],
      actions: [],
      untilS: Math.ceil(fromS + afterS),
    },
    tells: {
      code: step === 'modulation' ? 'quiz.conduct.tells.service' : 'quiz.conduct.tells.step',
      with: { plant: titleOf(facts), step: { is: 'step', step } },
    },
    shows: true,
  };
}

/** What a fault made of a start; null where it did not lock out. */
export function lockedOutBy(
  facts: PlantFacts,
  chance: RandomState,
  fault: string,
  afterS: number,
): LockedOut | null {
  const { plan, id } = facts.plant;
  const severity = faultsFor(plan.setup.plant).find((one) => one.id === fault)?.severity.typical;
  if (severity === undefined) return null;
  const started = {
    plant: id,
    tolerances: pickTolerances(chance),
    faults: [{ fault, severity, onset: { kind: 'start' as const } }],
    actions: [],
  };
  const run = createRun(setupOfRun(plan, started), { keep: 'hash only' });
  while (run.timeS() < plan.untilS && run.status().lockout === null) run.advanceTo(run.timeS() + 1);
  const lockout = run.events().find((event) => event.type === 'lockout');
  if (lockout?.type !== 'lockout') return null;
  const stepsS: Record<string, number> = {};
  for (const event of run.events()) if (event.type === 'step') stepsS[event.step] = event.t;
  const { t, cause, step } = lockout;
  run.advanceTo(Math.ceil(t + afterS));
  const place = run.channels.findIndex((channel) => channel.id === 'furnace.combustible');
  const unburnt = run.frame(run.frameCount() - 1)[place] ?? 0;
  return {
    run: { ...started, untilS: Math.ceil(t + afterS) },
    tells: {
      code: 'quiz.conduct.tells.lockout',
      with: {
        plant: titleOf(facts),
        step: { is: 'step', step },
        cause: { is: 'word', of: 'cause', word: cause },
      },
    },
    shows: true,
    fault,
    lockoutS: t,
    cause,
    step,
    unburnt,
    stepsS,
  };
}

/** The same for work that was begun since: how the plant was found. */
export function asFound({ tells }: Situation): Statement {
  return { ...tells, code: 'quiz.conduct.tells.found' };
}

function titleOf({ plant }: PlantFacts): string {
  return plant.plan.setup.plant.title;
}
