import type { Run, RunSetup } from '../../engine/index.ts';
import type { ExerciseAnswer } from '../../scenario/index.ts';
import type { BenchPort } from './bench-port.ts';
import type { ShownItem } from './item-run-schema.ts';
import type { Facts, Failure, ToPage } from './protocol.ts';
import type { RunKind } from './work-protocol.ts';

export interface Stage {
  readonly setup: RunSetup;
  /** The same plant with nothing wrong; gives the start chart its expected band. */
  readonly healthySetup: RunSetup;
  /** 0 where no expected band is wanted. */
  readonly healthyUntilS: number;
  /** What is right to say of it; null where nothing is to be named. */
  readonly answer: ExerciseAnswer | null;
  /** The run ends here. */
  readonly endS: number;
  facts(run: Run): Facts;
}

export interface StageChoices {
  /** Of the kind `quiz` only. */
  readonly item?: ShownItem | undefined;
  /** A library laid over the shipped one, unchecked. */
  readonly given?: unknown;
  /** In place of the exercise's own. */
  readonly seed?: number | undefined;
}

export interface HostPorts {
  nowMs(): number;
  post(message: ToPage, transfer?: Transferable[]): void;
  openStage: (id: string, kind: RunKind, choices: StageChoices) => Stage;
  createRun: (setup: RunSetup) => Run;
  readonly bench: BenchPort;
}

export interface RunHost {
  receive(message: unknown): void;
  /** Takes the run as far as real time asks; false when nothing is running. */
  tick(): boolean;
}

/** A scenario that cannot be opened says why in words of the protocol. */
export interface OpenFailure {
  readonly failure: Failure;
  readonly detail: string;
}
export function openFailure(failure: Failure, detail: string): Error {
  return new Error(detail, { cause: { failure, detail } satisfies OpenFailure });
}
