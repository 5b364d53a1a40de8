import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Contact, createContactBoard, moveContact } from '../../../src/field/contact.ts';
import type { FieldParameters } from '../../../src/field/index.ts';
import {
  createWiring,
  isWiringStale,
  solveWiring,
  type Wiring,
} from '../../../src/field/wiring/index.ts';
import { INSULATION_S } from '../../../src/field/wiring/network.ts';
import { library } from '../../support/library.ts';
import { solvePhasors } from './dense-phasors.ts';

const copyOf = <T>(value: T): T => JSON.parse(JSON.stringify(value)) as T;
const none = new Map<string, never>();

function wiringOf(plant: FieldParameters): Wiring {
  const w = createWiring(copyOf(plant), none, none, none, createContactBoard());
  solveWiring(w);
  return w;
}

/** Nodal equations of the alternating part, put down again from the branches alone. */
function balance(w: Wiring): { worst: number; largest: number } {
  const { network } = w;
  const { nodes, branchA, branchB, branchS, alternating, sources } = network;
  const net = new Float64Array(nodes + 1);
  let largest = 0;
  const flow = (a: number, b: number, amps: number) => {
    net[a] = (net[a] as number) - amps;
    net[b] = (net[b] as number) + amps;
    largest = Math.max(largest, Math.abs(amps));
  };
  const emf = new Map<number, number>();
  for (const { alternating: swings, liveNode, neutralNode, seriesS } of sources) {
    for (let i = 0; i < branchA.length; i++) {
      const here = branchA[i] === liveNode && branchB[i] === neutralNode;
      if (here && branchS[i] === seriesS) emf.set(i, swings ? w.supply.mainsVolts : 0);
    }
  }
  for (let i = 0; i < branchA.length; i++) {
    const a = branchA[i] as number;
    const b = branchB[i] as number;
    const across = (alternating[a] as number) - (alternating[b] as number) - (emf.get(i) ?? 0);
    flow(a, b, (branchS[i] as number) * across);
  }
  for (let node = 0; node < nodes; node++) {
    flow(node, nodes, INSULATION_S * (alternating[node] as number));
  }
  let worst = 0;
  for (let node = 0; node < nodes; node++) worst = Math.max(worst, Math.abs(net[node] as number));
  return { worst, largest };
}

/** The same by a full matrix with pivoting: another method altogether. */
function fullSolution(w: Wiring): Float64Array {
  const { nodes, branchA, branchB, branchS, sources } = w.network;
  const re = new Float64Array(nodes * nodes);
  const add = (i: number, j: number, value: number) => {
    if (i < nodes && j < nodes) re[i * nodes + j] = (re[i * nodes + j] as number) + value;
  };
  for (let node = 0; node < nodes; node++) add(node, node, INSULATION_S);
  for (let i = 0; i < branchA.length; i++) {
    const a = branchA[i] as number;
    const b = branchB[i] as number;
    if (a === b) continue;
    const siemens = branchS[i] as number;
    add(a, a, siemens);
    add(b, b, siemens);
    add(a, b, -siemens);
    add(b, a, -siemens);
  }
  const currents = new Float64Array(nodes);
  for (const { alternating, liveNode, neutralNode, seriesS } of sources) {
    if (!alternating) continue;
    const amps = w.supply.mainsVolts * seriesS;
    currents[liveNode] = (currents[liveNode] as number) + amps;
    currents[neutralNode] = (currents[neutralNode] as number) - amps;
  }
  return solvePhasors({ nodes, re, im: new Float64Array(nodes * nodes) }, currents).re;
}

describe.each(library.plants.map((plant) => [plant.id, plant] as const))('%s', (_id, plant) => {
  const pattern = fc.array(fc.boolean(), { minLength: 80, maxLength: 80 });

  it('keeps Kirchhoff to 1e-9 of the largest current for any pattern of contacts', () => {
    const w = wiringOf(plant);
    fc.assert(
      fc.property(pattern, (made) => {
        w.contacts.forEach((contact, i) => {
          moveContact(contact, made[i] as boolean);
        });
        solveWiring(w);
        expect(isWiringStale(w)).toBe(false);
        const { worst, largest } = balance(w);
        expect(largest).toBeGreaterThan(0);
        // With the isolator open only insulation carries anything, and 120 V over a contact of
        // 0.05 Ω is itself no finer than 3e-13 A in a double.
        expect(worst).toBeLessThanOrEqual(Math.max(1e-9 * largest, 1e-12));
      }),
      { seed: 31, numRuns: 60 },
    );
  });

  it('agrees with a full matrix wherever a wire is not left hanging', () => {
    const w = wiringOf(plant);
    fc.assert(
      fc.property(pattern, (made) => {
        w.contacts.forEach((contact, i) => {
          moveContact(contact, made[i] as boolean);
        });
        solveWiring(w);
        const full = fullSolution(w);
        for (let node = 0; node < w.network.nodes; node++) {
          const here = w.network.alternating[node] as number;
          // Subtraction beside 1e-11 S of insulation costs the full matrix its digits at a
          // hanging wire: 1e-15 · 50 S / 1e-11 S. What is fed it has to 1e-9 V.
          if (Math.abs(here) > 1)
            expect(Math.abs((full[node] as number) - here)).toBeLessThan(1e-2);
        }
      }),
      { seed: 32, numRuns: 8 },
    );
  });

  it('does not depend on the order in which contacts moved', () => {
    const straight = wiringOf(plant);
    const wandering = wiringOf(plant);
    fc.assert(
      fc.property(pattern, pattern, (first, last) => {
        const set = (w: Wiring, made: boolean[]) => {
          w.contacts.forEach((contact: Contact, i) => {
            moveContact(contact, made[i] as boolean);
          });
          solveWiring(w);
        };
        set(wandering, first);
        set(wandering, last);
        set(straight, last);
        expect(wandering.network.alternating).toEqual(straight.network.alternating);
      }),
      { seed: 33, numRuns: 20 },
    );
  });
});
