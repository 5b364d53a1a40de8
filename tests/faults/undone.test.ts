import { describe, expect, it } from 'vitest';
import { type Action, createRun, type Run } from '../../src/engine/index.ts';
import { FAULTS, type Fault, HAND_ACTS, type HandAct } from '../../src/faults/index.ts';
import { library } from '../support/library.ts';
import { soundSetup, withFault } from './exercises.ts';

const ACTS: Record<HandAct, Action> = {
  'turn-cock': { type: 'turn-cock', cock: 'cock', opening: 1 },
  'reset-limits': { type: 'reset-limits', pressed: true },
  firing: { type: 'firing', mode: 'automatic', rate: 0 },
};
const undoable = FAULTS.flatMap((fault) =>
  HAND_ACTS.filter((act) => fault.remedies.some(({ way }) => way === act)).map((act) => ({
    fault,
    act: ACTS[act],
  })),
);

function runWith(plant: string, fault: Fault): Run {
  const run = createRun(withFault(soundSetup(plant), fault, fault.severity.high));
  run.advanceTo(2);
  return run;
}

describe.each(library.plants.map((plant) => [plant.id, plant] as const))('%s', (id, plant) => {
  it.each(
    undoable
      .filter(({ fault }) => fault.appliesTo(plant))
      .map((one) => [one.fault.id, one] as const),
  )('%s: stands until the act that undoes it, and through any other', (_id, { fault, act }) => {
    const run = runWith(id, fault);
    for (const other of Object.values(ACTS)) if (other.type !== act.type) run.act(other);
    run.advanceTo(3);
    expect(run.standingFaults().map((one) => one.fault)).toEqual([fault.id]);
    run.act(act);
    run.advanceTo(4);
    expect(run.standingFaults()).toEqual([]);
    // An open limit has locked the burner out; a deliberate reset is a press and a release.
    run.act({ type: 'reset', pressed: true });
    run.advanceTo(5);
    run.act({ type: 'reset', pressed: false });
    run.advanceTo(260);
    expect(run.status().lockout).toBeNull();
    expect(run.status().step).toBe('modulation');
  });

  it('hand control left on holds its rate in service, whatever the vessel asks for', () => {
    const fault = FAULTS.find((one) => one.id === 'hand control left on') as Fault;
    const run = createRun(withFault(soundSetup(id), fault, 0.6));
    run.advanceTo(320);
    expect(run.status().step).toBe('modulation');
    const rate = run.channels.findIndex((channel) => channel.id === 'firing.rate');
    expect(run.frame(run.frameCount() - 1)[rate]).toBeCloseTo(0.6, 6);
  });
});
