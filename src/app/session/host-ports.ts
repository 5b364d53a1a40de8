import type { Run, RunSetup } from '../../engine/index.ts';
import type { Facts, Failure, ToPage } from './protocol.ts';

export interface Stage {
  readonly setup: RunSetup;
  /** The same plant with nothing wrong; gives the start chart its expected band. */
  readonly healthySetup: RunSetup;
  readonly healthyUntilS: number;
  facts(run: Run): Facts;
}

export interface HostPorts {
  nowMs(): number;
  post(message: ToPage, transfer?: Transferable[]): void;
  openStage: (scenario: string) => Stage;
  createRun: (setup: RunSetup) => Run;
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
