/** Eyes in the control box: the terminal strip, and the wires that run to it. */
import { wireAt } from '../../field/index.ts';
import type { RunState } from '../run-state.ts';
import { type LookWord, type Seen, seenInside } from './look-reading.ts';

/** A piece of wire is no more than this; what else joins two wires is not seen. */
const WIRE_OHM = 5;
/** A joint beyond this has only air between: the wire hangs out of its terminal. */
const OUT_OHM = 1e9;
/** Between two wires in the name of a value; no wire's own name has it. */
export const JOINED_BY = '+';

/**
 * What has been put between two wires, whoever put it there, and what has come out. A wire in the
 * wrong terminal, a loose screw and a burnt joint look like all the others.
 *
 * Values: `wire+wire`, how many jumpers lie between the two; `element:1`, 1 where a wire hangs out.
 */
export function lookAtTerminals({ faults, field }: RunState): Seen {
  const { bridges, joints } = faults.live.wiring;
  const { wires } = field.wiring.netlist;
  const values: Record<string, number> = {};
  const words: LookWord[] = [];
  for (const { from, to, ohm } of bridges) {
    const one = wireAt(field.wiring, from);
    const other = wireAt(field.wiring, to);
    if (ohm > WIRE_OHM || one === null || other === null || one === other) continue;
    const isTurned = wires.indexOf(one) > wires.indexOf(other);
    const between = isTurned ? other + JOINED_BY + one : one + JOINED_BY + other;
    values[between] = (values[between] ?? 0) + 1;
  }
  if (Object.keys(values).length > 0) words.push('look.strip.jumper');
  const out = joints.filter(({ ohm }) => ohm > OUT_OHM);
  for (const { terminal } of out) values[terminal] = 1;
  if (out.length > 0) words.push('look.strip.wire-out');
  return seenInside(words.length === 0 ? ['look.strip.in-order'] : words, values);
}
