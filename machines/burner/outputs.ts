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

const NOTHING: Outputs = { commands: 0, target: TARGETS.indexOf('rest') };
const tables = new Map<string, readonly Outputs[]>();

/** What a plant is told, by phase: nothing but the phases' own descriptions, with the variant applied. */
export function outputTable(variant: Variant): readonly Outputs[] {
  const key = JSON.stringify(variant, Object.keys(variant).sort());
  let table = tables.get(key);
  if (table === undefined) {
    table = PHASES.map(({ meta }) => outputsFor(meta, variant));
    tables.set(key, table);
  }
  return table;
}

export function outputsFor(meta: StateMeta, variant: Variant): Outputs {
  return {
    commands: meta.drives
      .filter((drive) => applies(drive.when, variant))
      .reduce((word, drive) => word | (1 << COMMANDS.indexOf(drive.command)), 0),
    target: TARGETS.indexOf(meta.target),
  };
}

export function outputsOf(snapshot: {
  readonly value: unknown;
  readonly context: { readonly variant: Variant };
}): Outputs {
  const phase = phaseOf(snapshot.value);
  if (phase === undefined) return NOTHING;
  return outputTable(snapshot.context.variant)[phase.index] ?? NOTHING;
}
