import { number, type ParameterTable, type Values } from '../../quantity/index.ts';
import type { GasEdgeParameters } from './edge-parameters.ts';
import { type MixtureParameters, mixtureParameters } from './mixture.ts';

export const gasNodeParameters = {
  volumeDm3: number('dm³', 0.01, 10000, 'gas volume of the pipe and bodies around this point'),
  startGaugePa: number('Pa', -5000, 1000000, 'gauge pressure at the start of a run', 0),
  escapeDm3H: number(
    'dm³/h',
    0,
    100000,
    'gas that its joints let into the room at 100 mbar, at 15 °C and 1013.25 mbar',
    0,
  ),
} as const satisfies ParameterTable;

/** The gas service up to the train's inlet: the main, its resistance, and the service pipe. */
export const gasSupplyParameters = {
  pressureGaugePa: number('Pa', 0, 1000000, 'gauge pressure at the main, without flow'),
  ratedFlowKgS: number('kg/s', 1e-5, 100, 'flow at which the pressure loss is stated'),
  ratedDropPa: number('Pa', 1, 500000, 'pressure loss from the main to the train at rated flow'),
  volumeDm3: number('dm³', 0.01, 100000, 'gas volume of the service pipe', 40),
  airDm3: number('dm³', 0, 100000, 'air that work on the train has left behind its first cock', 0),
} as const satisfies ParameterTable;

export const gasTrainNumbers = {
  temperatureK: number('K', 230, 350, 'temperature of the gas, the same everywhere', 288.15),
} as const satisfies ParameterTable;

export type GasNodeParameters = { readonly id: string } & Values<typeof gasNodeParameters>;
export type GasSupplyParameters = Values<typeof gasSupplyParameters>;

export interface GasTrainParameters {
  mixture: MixtureParameters;
  temperatureK: number;
  supply: GasSupplyParameters;
  nodes: GasNodeParameters[];
  edges: GasEdgeParameters[];
}

/** The service pipe: a point every train has, fed by the main. */
export const SUPPLY = 'supply';
/** Points whose pressure is given from outside. */
export const BOUNDARIES = ['atmosphere', 'furnace'] as const;

export interface GasTrainIssue {
  readonly code:
    | 'reserved-name'
    | 'repeated-name'
    | 'unknown-point'
    | 'edge-to-itself'
    | 'two-boundaries'
    | 'loop'
    | 'curve'
    | 'empty-mixture';
  /** The node or edge it is about. */
  readonly id: string;
  /** The name or value found, where there is one. */
  readonly found: string;
}

/**
 * What is wrong with a train as a network, beyond the range of each number.
 *
 * Paths may run side by side between the same two points, but must not close a loop over three or
 * more: the solver eliminates along a tree.
 */
export function checkGasTrain(parameters: GasTrainParameters): GasTrainIssue[] {
  const issues: GasTrainIssue[] = [];
  const points = new Set<string>([SUPPLY, ...BOUNDARIES]);
  for (const { id } of parameters.nodes) {
    if (points.has(id)) {
      const reserved = id === SUPPLY || isBoundary(id);
      issues.push({ code: reserved ? 'reserved-name' : 'repeated-name', id, found: id });
    }
    points.add(id);
  }
  const edges = new Set<string>();
  const group = new Map<string, string>();
  const linked = new Set<string>();
  const rootOf = (id: string): string => {
    let root = id;
    for (let next = group.get(root); next !== undefined; next = group.get(root)) root = next;
    return root;
  };
  for (const edge of parameters.edges) {
    const { id, from, to } = edge;
    if (edges.has(id)) issues.push({ code: 'repeated-name', id, found: id });
    edges.add(id);
    const unknown = [from, to].filter((point) => !points.has(point));
    for (const found of unknown) issues.push({ code: 'unknown-point', id, found });
    if (edge.kind === 'control' && !isRising(edge.bladeDeg, edge.openFraction)) {
      issues.push({ code: 'curve', id, found: edge.bladeDeg.join(', ') });
    }
    if (unknown.length > 0) continue;
    if (from === to) {
      issues.push({ code: 'edge-to-itself', id, found: from });
      continue;
    }
    if (isBoundary(from) && isBoundary(to)) {
      issues.push({ code: 'two-boundaries', id, found: `${from}, ${to}` });
      continue;
    }
    if (isBoundary(from) || isBoundary(to)) continue;
    const pair = from < to ? `${from}\n${to}` : `${to}\n${from}`;
    if (linked.has(pair)) continue;
    linked.add(pair);
    const a = rootOf(from);
    const b = rootOf(to);
    if (a === b) issues.push({ code: 'loop', id, found: `${from}, ${to}` });
    else group.set(a, b);
  }
  const fractions = Object.keys(mixtureParameters) as (keyof MixtureParameters)[];
  if (!fractions.some((name) => parameters.mixture[name] > 0)) {
    issues.push({ code: 'empty-mixture', id: 'mixture', found: '' });
  }
  return issues;
}

export function isBoundary(id: string): boolean {
  return id === BOUNDARIES[0] || id === BOUNDARIES[1];
}

function isRising(x: readonly number[], y: readonly number[]): boolean {
  if (x.length < 2 || x.length !== y.length) return false;
  return x.every((value, i) => i === 0 || value > (x[i - 1] as number));
}
