/** Small made-up cases, in which every number can be worked out by hand, and ways through them. */
import {
  type Atlas,
  type Case,
  caseWith,
  type Decision,
  type DecisionAct,
  type Reasoning,
  reasonAbout,
  type Seen,
} from '../../../src/diagnosis/index.ts';
import { shippedSetup } from '../../support/library.ts';

export interface Row {
  /** Null: nothing is wrong. */
  readonly fault: string | null;
  readonly priorWeight?: number;
  /** One list of words a plant; a word a column. */
  readonly plants: readonly (readonly string[])[];
}
export interface Column {
  readonly check: string;
  readonly moment?: string;
  readonly aspect?: string;
}

export const { plant } = shippedSetup('healthy-start');

/** Parts go by the names of their faults. Without a plant of its own nothing is known of the truth. */
export function caseFrom(
  columns: readonly Column[],
  rows: readonly Row[],
  own: readonly string[] = [],
  ownPlant: readonly string[] | null = null,
  reachedS: Readonly<Record<string, number>> = {},
): Case {
  const sample =
    ownPlant === null
      ? null
      : new Map(columns.map((at, k) => [nameOf(at), ownPlant[k] ?? ''] as const));
  return caseWith(atlasFrom(columns, rows, reachedS), {
    plant,
    own,
    accepted: [],
    tools: 'all',
    truth: sample,
    truthAfter: null,
  });
}

function atlasFrom(
  columns: readonly Column[],
  rows: readonly Row[],
  reachedS: Readonly<Record<string, number>>,
): Atlas {
  const plants = rows.flatMap(({ plants }) => plants);
  return {
    plant: plant.id,
    fingerprint: '',
    causes: rows.map(({ fault, priorWeight = 1 }) => ({ fault, priorWeight })),
    causeOf: Uint16Array.from(rows.flatMap(({ plants }, cause) => plants.map(() => cause))),
    keys: columns.map(({ check, moment = 'lockout', aspect = 'value' }, k) => {
      const bins = [...new Set(plants.map((words) => words[k] ?? ''))];
      const column = Uint8Array.from(plants, (words) => bins.indexOf(words[k] ?? ''));
      return { check, moment, aspect, bins, column, band: null };
    }),
    severities: plants.map(() => 1),
    reachedS,
  };
}

function nameOf({ check, moment = 'lockout', aspect = 'value' }: Column): string {
  return `${check}@${moment}#${aspect}`;
}

export function read(check: string, value: string, moment = 'lockout'): DecisionAct {
  return { kind: 'check', check, seen: [saw(check, value, moment)] };
}
export function saw(check: string, value: string, moment = 'lockout'): Seen {
  return { moment, readings: [{ check, aspect: 'value', value }] };
}

export function way(...acts: readonly DecisionAct[]): readonly Decision[] {
  return acts.map((act, i) => ({ t: 10 * i, ...act }));
}
export function reasonOn(theCase: Case, ...acts: readonly DecisionAct[]): Reasoning {
  return reasonAbout(theCase, way(...acts));
}

export const ARRIVED: DecisionAct = { kind: 'arrive', seen: [] };
