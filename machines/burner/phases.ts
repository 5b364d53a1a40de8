import { burnerMachine } from './machine.ts';
import type { StateMeta } from './meta.ts';
import type { StepName } from './terminals.ts';

/** One state of the sequence that the burner can rest in, with what it says of itself. */
export interface Phase {
  /** Place in PHASES. */
  readonly index: number;
  /** Path of the state within the sequence, such as `starting.prePurge.purge.timing`. */
  readonly path: string;
  readonly meta: StateMeta;
}

interface Node {
  readonly path: readonly string[];
  readonly states: Readonly<Record<string, Node>>;
  readonly meta?: StateMeta | undefined;
}

/** Read from the machine, in the order in which the charts write them. */
export const PHASES: readonly Phase[] = collectPhases(burnerMachine.states.sequence as Node);
export const STEP_INFO: Readonly<Record<StepName, readonly Phase[]>> = groupByStep(PHASES);

const PHASE_AT = new Map(PHASES.map((phase) => [phase.path, phase]));

/** The phase of a state value of the machine; undefined before it has settled into one. */
export function phaseOf(value: unknown): Phase | undefined {
  let inner = (value as { readonly sequence: unknown }).sequence;
  let path = '';
  while (typeof inner === 'object' && inner !== null) {
    for (const key in inner) {
      path += `${key}.`;
      inner = (inner as Record<string, unknown>)[key];
      break;
    }
  }
  return PHASE_AT.get(path + String(inner));
}

function collectPhases(sequence: Node): Phase[] {
  const found: Phase[] = [];
  const visit = (node: Node): void => {
    if (node.meta !== undefined) {
      found.push({ index: found.length, path: node.path.slice(1).join('.'), meta: node.meta });
    }
    for (const child of Object.values(node.states)) visit(child);
  };
  visit(sequence);
  return found;
}

function groupByStep(phases: readonly Phase[]): Record<StepName, Phase[]> {
  const groups = {} as Record<StepName, Phase[]>;
  for (const phase of phases) {
    groups[phase.meta.step] ??= [];
    groups[phase.meta.step].push(phase);
  }
  return groups;
}
