import { type Action, createRun, type FaultOrder, type RunSetup } from '../../src/engine/index.ts';
import { findFault, partsOf, type Remedy, remediesOf, settingsOf } from '../../src/faults/index.ts';

/** Whole minutes of work are of no account here: the plant only has to see act follow act. */
const BETWEEN_S = 2;
/** Longer than a cold start with its warm-up at low fire. */
const A_START_S = 2400;
export const HELD_S = 60;

/** A run at the moment when a technician stands before it, with hands that act one after the other. */
export function arrive(setup: RunSetup, atS: number) {
  const run = createRun(setup, { keep: 'hash only' });
  run.advanceTo(atS);
  const act = (action: Action) => {
    run.act(action);
    run.advanceTo(run.timeS() + BETWEEN_S);
  };
  return { run, act };
}

/**
 * Ends faults by the first remedy of each, as it is done safely: supply off and locked, and every
 * cock shut and locked where gas is opened; then all of it undone again.
 */
export function mendAll(
  { run, act }: ReturnType<typeof arrive>,
  orders: readonly FaultOrder[],
): void {
  const { plant } = run.setup;
  const remedies = orders.map((order) => firstRemedy(order.fault, run.setup));
  const opens = (part: string) =>
    partsOf(plant).some((one) => one.part === part && one.opens === 'gas');
  const cocks = plant.gasTrain.edges.flatMap((edge) =>
    edge.kind === 'cock' ? [{ id: edge.id, opening: edge.opening }] : [],
  );
  const isOpened = remedies.some(({ part }) => opens(part));

  act({ type: 'supply', on: false });
  act({ type: 'lock', point: 'isolator', on: true });
  if (isOpened) {
    for (const { id } of cocks) {
      act({ type: 'turn-cock', cock: id, opening: 0 });
      act({ type: 'lock', point: id, on: true });
    }
  }
  for (const remedy of remedies) for (const action of actsOf(remedy, run.setup)) act(action);
  if (isOpened) {
    for (const { id, opening } of cocks) {
      act({ type: 'lock', point: id, on: false });
      act({ type: 'turn-cock', cock: id, opening });
    }
  }
  act({ type: 'lock', point: 'isolator', on: false });
  act({ type: 'supply', on: true });
}

/** Resets what has latched, calls for heat, and says how the start came out. */
export function startAfter({ run, act }: ReturnType<typeof arrive>): string {
  act({ type: 'reset-limits', pressed: true });
  act({ type: 'reset-limits', pressed: false });
  if (run.status().lockout !== null) {
    act({ type: 'reset', pressed: true });
    act({ type: 'reset', pressed: false });
  }
  act({ type: 'call-for-heat', on: true });
  const until = run.timeS() + A_START_S;
  while (run.timeS() < until) {
    const { step, sinceS, lockout } = run.status();
    if (lockout !== null) return `locked out: ${lockout}`;
    if (step === 'modulation' && run.timeS() - sinceS >= HELD_S) return 'held in service';
    run.advanceTo(run.timeS() + 1);
  }
  return `still in ${run.status().step}`;
}

export function firstRemedy(fault: string, { plant }: RunSetup): Remedy {
  const found = findFault(fault);
  const first = found === undefined ? undefined : remediesOf(found, plant)[0];
  if (first === undefined) throw new Error(`${fault} cannot be ended on ${plant.id}`);
  return first;
}

function actsOf({ part, way, setting }: Remedy, { plant }: RunSetup): Action[] {
  switch (way) {
    case 'turn-cock':
      return plant.gasTrain.edges.flatMap((edge) =>
        edge.kind === 'cock'
          ? [{ type: 'turn-cock', cock: edge.id, opening: edge.opening } as const]
          : [],
      );
    case 'reset-limits':
      return [
        { type: 'reset-limits', pressed: true },
        { type: 'reset-limits', pressed: false },
      ];
    case 'firing':
      return [{ type: 'firing', mode: 'automatic', rate: 0 }];
    case 'adjust': {
      const dial = settingsOf(plant).find((one) => one.part === part && one.setting === setting);
      if (dial === undefined) throw new Error(`no dial ${part}, ${setting} on ${plant.id}`);
      return [{ type: 'adjust', part, setting: dial.setting, value: dial.value }];
    }
    default:
      return [{ type: 'repair', part, way }];
  }
}
