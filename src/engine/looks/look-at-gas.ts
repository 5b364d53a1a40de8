/** Eyes along the gas train. */
import { escapeKgS } from '../../plant/gas/index.ts';
import type { RunState } from '../run-state.ts';
import {
  type LookOptions,
  type LookWord,
  roughly,
  type Seen,
  seen,
  seenInside,
} from './look-reading.ts';

type ValveName = 'upstream' | 'downstream' | 'vent';

/** A stem or handle within this share of its end looks as if it were there. */
const AT_END = 0.04;
const NARROWED = 0.1;
const NEARLY_SHUT = 0.8;
/** Marks on two shafts that differ by less look the same. */
const APART_DEG = 2.5;
/** Foam grows from about a bubble a second, kg/s. */
const FOAMS_KGS = 1e-8;

export function lookAtIndicator({ plant }: RunState, valve: ValveName): Seen | null {
  const stem = stemOf(plant.gas, `${valve}-valve`);
  if (stem === null) return null;
  return seen([openingWord(stem)], { openShare: roughly(stem, 0.05) });
}

export function lookAtProofSwitch({ field }: RunState, valve: ValveName): Seen | null {
  const proof = field.closedProofs.find(({ parameters }) => parameters.valve === `${valve} valve`);
  if (proof === undefined) return null;
  const { adjustment } = proof.parameters;
  return seen([proof.snap.made ? 'look.proof.pressed' : 'look.proof.free'], {
    switchPointShare: roughly(adjustment, 0.1),
  });
}

export function lookAtCocks({ faults }: RunState): Seen | null {
  const cocks = faults.live.gasTrain.edges.flatMap((edge) =>
    edge.kind === 'cock' ? [[edge.id, roughly(edge.opening, 0.05)] as const] : [],
  );
  if (cocks.length === 0) return null;
  const least = Math.min(...cocks.map(([, opening]) => opening));
  return seen([openingWord(least)], Object.fromEntries(cocks));
}

export function lookAtStrainer({ faults }: RunState): Seen | null {
  const strainer = faults.live.gasTrain.edges.find(({ kind }) => kind === 'strainer');
  if (strainer?.kind !== 'strainer') return null;
  return wayInside(strainer.blockedFraction);
}

export function lookAtBreather({ faults }: RunState): Seen | null {
  const regulator = faults.live.gasTrain.edges.find(({ kind }) => kind === 'regulator');
  if (regulator?.kind !== 'regulator') return null;
  const { breatherBlockedFraction } = regulator;
  return seen([wayWord(breatherBlockedFraction)], {
    closedShare: roughly(breatherBlockedFraction, 0.1),
  });
}

/** The slot in the end of the valve's own shaft, against the mark of its servo. */
export function lookAtFuelValveShaft({ plant, field }: RunState): Seen | null {
  const { control } = plant.places;
  if (control < 0) return null;
  const servoDeg = field.fuelValve?.shaftDeg ?? 0;
  const bladeDeg = plant.gas.bladeDeg[control] as number;
  return seen(
    [Math.abs(servoDeg - bladeDeg) < APART_DEG ? 'look.shaft.together' : 'look.shaft.apart'],
    { servoShaftDeg: roughly(servoDeg, 1), bladeDeg: roughly(bladeDeg, 1) },
  );
}

/**
 * With leak spray on every joint: what comes out there now, kg/s by the node of the train. Bare eyes
 * do not see gas.
 */
export function lookAtJoints({ plant }: RunState, { spray = false }: LookOptions): Seen {
  if (!spray) return seen(['look.joints.bare']);
  const { gas } = plant;
  const values: Record<string, number> = {};
  const escaping = escapeKgS(gas);
  let most = 0;
  for (const [i, id] of gas.nodeIds.entries()) {
    const kgS = Math.max(0, escaping[i] ?? 0);
    values[id] = kgS;
    most = Math.max(most, kgS);
  }
  return seen([most > FOAMS_KGS ? 'look.joints.foam' : 'look.joints.dry'], values);
}

export function wayInside(closedShare: number): Seen {
  return seenInside([wayWord(closedShare)], { closedShare: roughly(closedShare, 0.1) });
}

export function wayWord(closedShare: number): LookWord {
  if (closedShare < NARROWED) return 'look.way.clear';
  return closedShare < NEARLY_SHUT ? 'look.way.dirty' : 'look.way.nearly-shut';
}

export function openingWord(opening: number): LookWord {
  if (opening <= AT_END) return 'look.valve.shut';
  return opening >= 1 - AT_END ? 'look.valve.open' : 'look.valve.part-open';
}

function stemOf(gas: RunState['plant']['gas'], id: string): number | null {
  const edge = gas.edgeIds.indexOf(id);
  return edge < 0 ? null : (gas.stem[edge] as number);
}
