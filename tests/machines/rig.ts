import {
  type Burner,
  type BurnerChange,
  type Cause,
  COMMANDS,
  type CommandName,
  createBurner,
  createSimulatedClock,
  describePhase,
  INPUT_BITS,
  INPUTS,
  type InputName,
  type SavedLockout,
  type SimulatedClock,
  STEPS,
  type StepName,
  TARGETS,
  type TargetName,
  type Timings,
  type Variant,
} from '../../machines/index.ts';

export type Inputs = { readonly [I in InputName]?: boolean };

/** A plant at rest with nothing wrong and no call for heat. */
const AT_REST: readonly InputName[] = [
  'emergencyStopClear',
  'supplyInBand',
  'controlFuseMade',
  'waterAboveFirst',
  'waterAboveSecond',
  'highLimitMade',
  'furnacePressureInBand',
  'gasPressureAboveLow',
  'gasPressureBelowHigh',
  'upstreamValveClosed',
  'downstreamValveClosed',
];

/** A burner on a bench, with a plant that does what it is told to and nothing by itself. */
export interface Rig {
  readonly burner: Burner;
  readonly clock: SimulatedClock;
  readonly changes: readonly BurnerChange[];
  step(): StepName;
  /** The cause of the lockout, or the step where there is none. */
  outcome(): Cause | StepName;
  target(): TargetName;
  commanded(command: CommandName): boolean;
  /** Lets time pass; a flame without fuel goes out first. */
  pass(seconds: number): void;
  give(inputs: Inputs): void;
  /** Gives all that the present state says it waits for, or the contrary of all. */
  oblige(wanted?: boolean): void;
  /** Obliges state after state until a step is reached, then stops at once. */
  reach(step: StepName): void;
}

export interface RigOptions {
  readonly saved?: SavedLockout;
  /** Inputs that keep their value whatever is given. */
  readonly stuck?: Inputs;
  readonly startS?: number;
}

export function createRig(variant: Variant, timings: Timings, options: RigOptions = {}): Rig {
  const clock = createSimulatedClock((options.startS ?? 0) * 1000);
  const changes: BurnerChange[] = [];
  const { stuck = {} } = options;
  const burner = createBurner({
    variant,
    timings,
    clock,
    saved: options.saved,
    changes: (change) => changes.push(change),
  });
  let word = withInputs(
    AT_REST.reduce((all, input) => all | INPUT_BITS[input], 0),
    stuck,
  );
  burner.send(word);

  const rig: Rig = {
    burner,
    clock,
    changes,
    step: () => STEPS[burner.step] as StepName,
    outcome: () => burner.cause ?? rig.step(),
    target: () => TARGETS[burner.target] as TargetName,
    commanded: (command) => (burner.commands & (1 << COMMANDS.indexOf(command))) !== 0,
    pass(seconds) {
      burnOut();
      clock.advanceTo(clock.nowMs + Math.round(seconds * 1000));
    },
    give(inputs) {
      const next = withInputs(withInputs(word, inputs), stuck);
      if (next === word) return;
      word = next;
      burner.send(word);
    },
    oblige(wanted = true) {
      const { waitsFor } = describePhase(burner.phase, variant);
      const given = waitsFor.map(({ input, wanted: made }) => [input, made === wanted]);
      rig.give(Object.fromEntries(given) as Inputs);
    },
    reach(step) {
      for (let moves = 0; moves < 200 && rig.step() !== step; moves++) {
        const phase = burner.phase;
        rig.oblige();
        burnOut();
        if (burner.phase !== phase) continue;
        if (clock.nextDueMs === Number.POSITIVE_INFINITY) break;
        clock.advanceTo(clock.nextDueMs);
      }
      if (rig.step() !== step) throw new Error(`${step} not reached: ${rig.outcome()}`);
    },
  };
  /** The one thing the plant does by itself: without fuel no flame. */
  function burnOut(): void {
    const fuel = (['pilotValve', 'upstreamValve', 'downstreamValve'] as const).some(rig.commanded);
    if (!fuel) rig.give({ flame: false });
  }
  return rig;
}

function withInputs(word: number, inputs: Inputs): number {
  let next = word;
  for (const input of INPUTS) {
    const made = inputs[input];
    if (made === undefined) continue;
    next = made ? next | INPUT_BITS[input] : next & ~INPUT_BITS[input];
  }
  return next;
}
