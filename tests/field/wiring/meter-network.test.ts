import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createContactBoard, moveContact } from '../../../src/field/contact.ts';
import type { FieldParameters } from '../../../src/field/index.ts';
import {
  createWiring,
  prepareWiring,
  readMeter,
  solveWiring,
  type Wiring,
} from '../../../src/field/wiring/index.ts';
import { library } from '../../support/library.ts';
import { readDenseMeter } from './dense-meter.ts';

const METER_OHM = 1e7;
const copyOf = <T>(value: T): T => JSON.parse(JSON.stringify(value)) as T;
const none = new Map<string, never>();

/** Every sender sends something of its own, so that loops and tracks carry current. */
function wiringOf(plant: FieldParameters): Wiring {
  const signals = new Map<string, () => number>(
    plant.wiring.rungs
      .flat()
      .filter((name) => /\.(loop|wiper|feedback|signal)$|^ao\./.test(name))
      .map((name, i) => [name, () => 0.1 * (i + 1)]),
  );
  const w = createWiring(copyOf(plant), none, none, signals, createContactBoard());
  solveWiring(w);
  return w;
}

/**
 * How far the dense matrix may be off: beside branches of 20 S it holds what hangs by less to no
 * better than 1e-15 · 20 S over the conductance that it hangs by.
 */
function digitsOf(ohm: number): number {
  return Math.max(1e-9, 1e-13 * Math.min(ohm, METER_OHM));
}

describe.each(library.plants.map((plant) => [plant.id, plant] as const))('%s', (_id, plant) => {
  it('a meter on kept factors reads what one in the matrix itself reads, wherever it stands', () => {
    const w = wiringOf(plant);
    const places = [...w.network.nodeAt.keys()];
    const place = fc.constantFrom(...places);
    let compared = 0;
    fc.assert(
      fc.property(
        fc.array(fc.boolean(), { minLength: 80, maxLength: 80 }),
        fc.array(fc.tuple(place, place), { minLength: 5, maxLength: 5 }),
        (made, pairs) => {
          w.contacts.forEach((contact, i) => {
            moveContact(contact, made[i] as boolean);
          });
          solveWiring(w);
          for (const [from, to] of pairs) {
            const dense = readDenseMeter(w, { kind: 'volts', from, to }, METER_OHM);
            const volts = readMeter(w, { kind: 'volts', from, to });
            if (dense === null || volts === null) throw new Error(`no ${from} or no ${to}`);
            const near = digitsOf(dense.ohm);
            expect(Math.abs(volts.alternating - dense.alternating)).toBeLessThan(near * 130);
            expect(Math.abs(volts.direct - dense.direct)).toBeLessThan(near * 30);
            const ohms = readMeter(w, { kind: 'ohms', from, to });
            if (ohms !== null && !ohms.live && dense.ohm < 1e6) {
              compared += 1;
              expect(Math.abs(ohms.value - dense.ohm)).toBeLessThan(near * (1 + dense.ohm));
            }
          }
        },
      ),
      { seed: 41, numRuns: 25 },
    );
    expect(compared).toBeGreaterThan(3);
  });

  it('a clamp reads what the dense matrix has in that terminal', () => {
    const w = wiringOf(plant);
    for (const { name } of w.netlist.elements) {
      const question = { kind: 'amps', from: `${name}:1`, to: '' } as const;
      const dense = readDenseMeter(w, question, METER_OHM);
      const amps = readMeter(w, question);
      expect(amps?.alternating).toBeCloseTo(dense?.alternating ?? Number.NaN, 9);
      expect(amps?.direct).toBeCloseTo(dense?.direct ?? Number.NaN, 9);
    }
  });

  it('a reading follows a joint, a bridge and a change of the mains', () => {
    const w = wiringOf(plant);
    const [L0 = ''] = w.netlist.elements
      .filter(({ name }) => name === 'isolator')
      .map(({ toWire }) => toWire);
    const question = { kind: 'volts', from: L0, to: 'N' } as const;
    w.contacts.forEach((contact) => {
      moveContact(contact, true);
    });
    solveWiring(w);
    const whole = readMeter(w, question)?.value ?? 0;
    expect(whole).toBeGreaterThan(0.9 * w.supply.mainsVolts);
    w.parameters.wiring.joints.push({ terminal: 'isolator:1', ohm: 1e9 });
    prepareWiring(w);
    solveWiring(w);
    expect(readMeter(w, question)?.value).toBeLessThan(5);
    w.parameters.wiring.bridges.push({ from: 'L', to: L0, ohm: 0.05 });
    prepareWiring(w);
    solveWiring(w);
    expect(readMeter(w, question)?.value).toBeCloseTo(whole, 0);
  });

  it('a meter leaves the wiring as it was', () => {
    const w = wiringOf(plant);
    const before = Float64Array.from(w.network.alternating);
    const directly = Float64Array.from(w.network.direct);
    for (const to of w.netlist.wires) readMeter(w, { kind: 'ohms', from: 'L', to });
    w.dirty = true;
    for (const island of w.network.islands) island.dirty = true;
    solveWiring(w);
    expect(w.network.alternating).toEqual(before);
    expect(w.network.direct).toEqual(directly);
  });
});
