/** Faults of joints and insulation: loose, burnt, leaking to earth, changed places. */

import type { WiringParameters } from '../field/index.ts';
import {
  ANY_ONSET,
  BROKEN,
  type Fault,
  type FaultWords,
  faultOf,
  type SeverityRange,
  share,
} from './fault.ts';
import { by } from './mending.ts';
import type { PartName } from './parts.ts';
import { type FaultSubject, relayOf } from './subject.ts';
import {
  airflow,
  highGas,
  highLimit,
  lowGas,
  type Named,
  named,
  placeOf,
  safetyContact,
  wiresAt,
} from './wired.ts';

const FAMILY = 'supply and wiring';

interface Joint {
  readonly wiring: WiringParameters;
  readonly terminal: string;
  /** Ohms for each unit of severity. */
  readonly unitOhm: number;
}
type FindJoint = (s: FaultSubject) => Joint | undefined;

/** The same joint takes four times the volts from a plant of half the volts. */
const loadOhm = (s: FaultSubject) =>
  (s.field.supply.nominalVolts * s.field.supply.nominalVolts) / LOAD_W;
const LOAD_W = 100;
const IN_LOADS = 'resistance of the joint, in those of a load of 100 W';

/** The first terminal of an element that stands in a rung. */
const firstOf =
  (element: Named, unitOhm: (s: FaultSubject) => number = () => 1): FindJoint =>
  (s) => {
    const place = placeOf(element)(s);
    return place && { wiring: place.wiring, terminal: `${place.element}:1`, unitOhm: unitOhm(s) };
  };
const sourceTerminal =
  (end: 1 | 2): FindJoint =>
  (s) => {
    const source = s.wiring.sources.find(({ kind }) => kind === 'alternating');
    return source && { wiring: s.wiring, terminal: `${source.id}:${end}`, unitOhm: loadOhm(s) };
  };
const liveOf = sourceTerminal(1);
const neutralOf = sourceTerminal(2);

function badJoint(find: FindJoint, words: Omit<FaultWords, 'family' | 'onsets'>): Fault {
  return faultOf(
    find,
    { ...words, family: FAMILY, onsets: ANY_ONSET },
    ({ wiring, terminal, unitOhm }, severity) => {
      if (severity > 0) wiring.joints.push({ terminal, ohm: severity * unitOhm });
    },
  );
}

const LEAKAGE: SeverityRange = {
  unit: 'A',
  means: 'current to earth at nominal volts',
  low: 0.02,
  typical: 15,
  high: 40,
};

/** What takes microamps away is far less than what blows a fuse. */
const SIGNAL_LEAKAGE: SeverityRange = { ...LEAKAGE, low: 5e-4, typical: 0.05, high: 10 };

function earthFault(
  cable: string,
  part: PartName,
  element: Named,
  severity: SeverityRange = LEAKAGE,
): Fault {
  return faultOf(
    (s) => {
      const place = placeOf(element)(s);
      return place === undefined ? undefined : { ...place, volts: s.field.supply.nominalVolts };
    },
    {
      id: `earth fault on the ${cable} cable`,
      family: FAMILY,
      component: `${cable} cable`,
      mechanism: 'the insulation of a core is chafed through, so it leaks to the metal around it',
      severity,
      onsets: ANY_ONSET,
      repair: 'prove dead, test the insulation, replace the cable and what chafed it',
      remedies: by(part, 'replace'),
      priorWeight: 1,
    },
    ({ wiring, element, volts }, amps) => {
      if (amps <= 0) return;
      const [, after] = wiresAt(wiring, element);
      wiring.bridges.push({ from: after, to: 'earth', ohm: volts / amps });
    },
  );
}

/** Opened and shut together, two valves do the same whichever wire works which. */
const provedOneByOne =
  (element: Named): Named =>
  (s) =>
    s.field.interspaceComparators.length > 0 || s.field.closedProofs.length > 0
      ? element(s)
      : undefined;

function swapped(
  id: string,
  component: string,
  parts: readonly PartName[],
  one: Named,
  other: Named,
): Fault {
  return faultOf(
    (s) => {
      const a = placeOf(one)(s);
      const b = placeOf(other)(s);
      return a === undefined || b === undefined ? undefined : ([a, b] as const);
    },
    {
      id,
      family: FAMILY,
      component,
      mechanism: 'two wires changed places when they were last refitted',
      severity: BROKEN,
      onsets: ['start'],
      repair: 'prove dead, refit by the wiring diagram, prove each function again',
      remedies: parts.flatMap((part) => by(part, 'refit', 'replace')),
      priorWeight: 0.5,
    },
    ([a, b]) => {
      a.wiring.swaps.push({ one: `${a.element}:${FAR_END}`, other: `${b.element}:${FAR_END}` });
    },
  );
}
const FAR_END = 2;

const JOINTS: readonly Fault[] = [
  badJoint(firstOf(highLimit), {
    id: 'limit-string terminal loose',
    component: 'limit string',
    mechanism: 'a screw has worked loose, so the wire makes and breaks as things shake',
    severity: { unit: 'Ω', means: 'resistance while it is off', low: 5, typical: 1e6, high: 1e9 },
    repair: 'prove dead, tighten every terminal of the string, pull-test them',
    remedies: by('high limit wiring', 'tighten', 'refit', 'replace'),
    priorWeight: 2,
  }),
  badJoint(firstOf(safetyContact, loadOhm), {
    id: 'high-resistance contact at the safety relay',
    component: 'safety relay',
    mechanism: 'the burnt contact takes volts that valves and spark then lack',
    severity: share('resistance of the contact, in those of a load of 100 W', 0.03, 0.5, 5),
    repair: 'replace the relay, measure the volts across its contact under load',
    remedies: by('safety relay', 'replace'),
    priorWeight: 1,
  }),
  badJoint(firstOf(airflow), {
    id: 'high-resistance contact at the airflow switch',
    component: 'airflow switch',
    mechanism: 'the contact is dirty, so the input behind it gets too few volts',
    severity: { unit: 'Ω', means: 'resistance of the contact', low: 2e3, typical: 3e4, high: 1e6 },
    repair: 'replace the switch, measure the volts at the input',
    remedies: by('airflow switch', 'replace'),
    priorWeight: 1,
  }),
  badJoint(neutralOf, {
    id: 'loose neutral',
    component: 'control supply',
    mechanism: 'the neutral is loose at its terminal, so the volts shift with every load',
    severity: share(IN_LOADS, 0.015, 0.18, 20),
    repair: 'isolate, tighten the neutral, look for what the swing of volts has harmed',
    remedies: by('control supply wiring', 'tighten', 'refit', 'replace'),
    priorWeight: 1,
  }),
  badJoint(liveOf, {
    id: 'mains volts low under load',
    component: 'mains supply',
    mechanism: 'a burnt joint in the feed loses volts as soon as current is drawn',
    severity: share(IN_LOADS, 0.015, 0.18, 0.7),
    repair: 'measure the volts at rest and under load, find the joint between',
    remedies: by('mains feed', 'tighten', 'refit'),
    priorWeight: 1,
  }),
];

export const JOINT_FAULTS: readonly Fault[] = [
  ...JOINTS,
  earthFault(
    'valve',
    'upstream valve wiring',
    named((s) => relayOf(s, 'upstreamValve'), '.contact'),
  ),
  earthFault('airflow switch', 'airflow switch wiring', airflow),
  earthFault(
    'flame sensor',
    'flame sensor cable',
    named((s) => s.field.flameSensors[0], '.signal'),
    SIGNAL_LEAKAGE,
  ),
  swapped(
    'gas switch wires swapped',
    'gas switches',
    ['low-gas switch wiring', 'high-gas switch wiring'],
    lowGas,
    highGas,
  ),
  swapped(
    'main valve wires swapped',
    'main valves',
    ['upstream valve wiring', 'downstream valve wiring'],
    provedOneByOne(named((s) => relayOf(s, 'upstreamValve'), '.contact')),
    named((s) => relayOf(s, 'downstreamValve'), '.contact'),
  ),
  swapped(
    'pilot and upstream valve wires swapped',
    'pilot and upstream valves',
    ['pilot valve wiring', 'upstream valve wiring'],
    named((s) => relayOf(s, 'pilotValve'), '.contact'),
    named((s) => relayOf(s, 'upstreamValve'), '.contact'),
  ),
];
