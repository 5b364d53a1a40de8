import { applies } from './condition.ts';
import type { StateMeta } from './meta.ts';
import { PHASES, phaseOf } from './phases.ts';
import { COMMANDS, TARGETS, type Variant } from './terminals.ts';

export interface Outputs {
  /** Packed word, one bit a command in the order of COMMANDS. */
  readonly commands: number;
  /** Place in TARGETS. */
  readonly target: number;
}
export interface PhaseOutputs extends Outputs {
  /** Place in PHASES; -1 before the sequence has settled into one. */
  readonly phase: number;
}

const NOTHING: PhaseOutputs = { commands: 0, target: TARGETS.indexOf('rest'), phase: -1 };
const tables = new WeakMap<Variant, readonly PhaseOutputs[]>();

/** What a plant is told: nothing but what the state that the sequence rests in says it drives. */
export function outputsOf(snapshot: {
  readonly value: unknown;
  readonly context: { readonly variant: Variant };
}): PhaseOutputs {
  const phase = phaseOf(snapshot.value);
  if (phase === undefined) return NOTHING;
  return tableFor(snapshot.context.variant)[phase.index] ?? NOTHING;
}

export function outputsFor(meta: StateMeta, variant: Variant): Outputs {
  return {
    commands: meta.drives
      .filter((drive) => applies(drive.when, variant))
      .reduce((word, drive) => word | (1 << COMMANDS.indexOf(drive.command)), 0),
    target: TARGETS.indexOf(meta.target),
  };
}

function tableFor(variant: Variant): readonly PhaseOutputs[] {
  let table = tables.get(variant);
  if (table === undefined) {
    table = PHASES.map(({ meta, index }) => ({ ...outputsFor(meta, variant), phase: index }));
    tables.set(variant, table);
  }
  return table;
}
