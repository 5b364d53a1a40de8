import {
  CAUSES,
  type Cause,
  type Outputs,
  outputsFor,
  type StateMeta,
  type StepName,
} from '../../../machines/index.ts';
import { type Cube, forEachLeaf, meets, sizeOf } from './cubes.ts';
import {
  type Evaluator,
  type Outcome,
  runningTimers,
  type Snapshot,
  type Timer,
  WIDTH,
} from './evaluator.ts';
import { type Monitor, nextMonitor } from './monitor.ts';

/** A reachable configuration: state, the context that matters, and what the monitor remembers. */
export interface Configuration {
  readonly key: string;
  readonly snapshot: Snapshot;
  readonly meta: StateMeta;
  readonly outputs: Outputs;
  readonly monitor: Monitor;
  readonly timers: readonly Timer[];
  /** Words on which it was arrived at. */
  readonly arrivals: Cube[];
}
/** Power comes back, with a lockout kept or none. */
export interface PowerUp {
  readonly saved: Cause | null;
}
/** One way on from a configuration, for all words of the cube. */
export interface Move {
  readonly from: Configuration | null;
  readonly event: PowerUp | 'inputs' | Timer;
  readonly cube: Cube;
  readonly to: Configuration;
  /** The step that a lockout was entered from, on this way. */
  readonly lockoutStep: StepName | null;
  readonly cancelled: ReadonlySet<string>;
}
export interface Counts {
  readonly configurations: number;
  readonly leaves: number;
  readonly evaluations: number;
  /** (configuration, word) pairs the leaves of the inputs event stand for. */
  readonly pairs: number;
  /** (configuration, word, timer) triples the leaves of the timers stand for. */
  readonly timerPairs: number;
}

/**
 * Visits every configuration that can be reached and every move from it: on every word, and for
 * every running timer on every word on which the configuration rests. On any other word the
 * machine has moved on before a timer can fire; that it never rests on such a word is asserted.
 * Ends early when a visit says so.
 */
export function explore(evaluator: Evaluator, visit: (move: Move) => boolean): Counts {
  const found = new Map<string, Configuration>();
  const queue: Configuration[] = [];
  let leaves = 0;
  let pairs = 0;
  let timerPairs = 0;
  let goOn = true;

  const arrive = (
    from: Configuration | null,
    event: Move['event'],
    { snapshot, cancelled }: Outcome,
    cube: Cube,
  ): Configuration => {
    leaves += 1;
    const meta = activeMeta(snapshot);
    const outputs = outputsFor(meta, evaluator.variant);
    const monitor = nextMonitor(from, event, { meta, outputs }, cube);
    const key = keyOf(snapshot, monitor);
    let to = found.get(key);
    if (to === undefined) {
      to = { key, snapshot, meta, outputs, monitor, timers: runningTimers(snapshot), arrivals: [] };
      found.set(key, to);
      queue.push(to);
    }
    to.arrivals.push(cube);
    const { lockoutStep } = snapshot.context;
    goOn = visit({ from, event, cube, to, lockoutStep, cancelled }) && goOn;
    return to;
  };

  for (const saved of [...CAUSES, null]) {
    forEachLeaf(evaluator.powerUp(saved), (outcome, cube) =>
      arrive(null, { saved }, outcome, cube),
    );
  }
  const leftOn = new Map<Configuration, Cube[]>();
  for (let from = queue.pop(); from !== undefined && goOn; from = queue.pop()) {
    const here = from;
    const settledOn: Cube[] = [];
    const left: Cube[] = [];
    forEachLeaf(evaluator.inputs(here.snapshot), (outcome, cube) => {
      pairs += sizeOf(cube, WIDTH);
      const to = arrive(here, 'inputs', outcome, cube);
      (to === here ? settledOn : left).push(cube);
    });
    leftOn.set(here, left);
    for (const timer of here.timers) {
      for (const settled of settledOn) {
        const fire = (outcome: Outcome, cube: Cube): void => {
          timerPairs += sizeOf(cube, WIDTH);
          arrive(here, timer, outcome, cube);
        };
        forEachLeaf(evaluator.timer(here.snapshot, timer), fire, settled);
      }
    }
  }
  if (goOn) for (const [configuration, left] of leftOn) assertSettled(configuration, left);
  return {
    configurations: found.size,
    leaves,
    evaluations: evaluator.evaluations(),
    pairs,
    timerPairs,
  };
}

/** The timers of a configuration were followed only on words on which it rests: it must rest on those it was reached by. */
function assertSettled({ key, arrivals }: Configuration, left: readonly Cube[]): void {
  for (const arrival of arrivals) {
    if (left.some((cube) => meets(cube, arrival))) {
      throw new Error(`the machine was left unsettled in ${key}`);
    }
  }
}

/** What the state that the sequence rests in says of itself. */
export function activeMeta(snapshot: Snapshot): StateMeta {
  for (const node of snapshot._nodes) if (node.meta !== undefined) return node.meta;
  throw new Error(
    `the sequence rests in a state that does not describe itself: ${JSON.stringify(snapshot.value)}`,
  );
}

export function keyOf(snapshot: Snapshot, monitor: Monitor): string {
  const { cause, recycles, valvesProved } = snapshot.context;
  const active = snapshot._nodes.filter((node) => node.type === 'atomic').map((node) => node.order);
  const { purgeTimed, purged, proved, fuel } = monitor;
  return `${active.sort((a, b) => a - b)}|${cause ?? ''}|${recycles}|${valvesProved}|${purgeTimed}${purged}${proved}${fuel}`;
}
