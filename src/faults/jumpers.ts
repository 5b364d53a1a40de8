/** Jumpers that people left behind. */
import { BROKEN, type Fault, faultOf, NOT_INTERMITTENT } from './fault.ts';
import { by } from './mending.ts';
import type { PartName } from './parts.ts';
import { closedProofOf } from './subject.ts';
import {
  airflow,
  highLimit,
  lowGas,
  lowWater,
  type Named,
  named,
  placeOf,
  wiresAt,
} from './wired.ts';

/** A piece of wire across two terminals. */
const JUMPER_OHM = 0.05;

function jumper(across: string, wiring: PartName, element: Named, priorWeight = 1): Fault {
  return faultOf(
    placeOf(element),
    {
      id: `jumper left across the ${across}`,
      family: 'people',
      component: across,
      mechanism: 'a jumper put in for a test was not taken out, so the contact counts for nothing',
      severity: BROKEN,
      onsets: NOT_INTERMITTENT,
      repair: 'take the jumper out, prove the interlock, find out why it was put in',
      remedies: by(wiring, 'remove jumper'),
      priorWeight,
    },
    (place) => {
      const [from, to] = wiresAt(place.wiring, place.element);
      place.wiring.bridges.push({ from, to, ohm: JUMPER_OHM });
    },
  );
}

export const JUMPER_FAULTS: readonly Fault[] = [
  jumper('airflow switch', 'airflow switch wiring', airflow),
  jumper('low-gas switch', 'low-gas switch wiring', lowGas),
  jumper('low-water cut-off', 'first low-water cut-off wiring', lowWater, 2),
  jumper('high limit', 'high limit wiring', highLimit),
  jumper(
    'upstream valve proof of closure',
    'upstream valve proof of closure wiring',
    named((s) => closedProofOf(s, 'upstream valve'), ''),
    0.5,
  ),
];
