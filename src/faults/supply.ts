/** Faults of supply and output relays. */
import type { RelayParameters } from '../field/index.ts';
import { ANY_ONSET, BROKEN, type Fault, faultOf, NOT_INTERMITTENT, share } from './fault.ts';
import { by } from './mending.ts';
import type { PartName } from './parts.ts';
import { type FaultSubject, relayOf } from './subject.ts';
import { WIRE_OFF_OHM } from './wires-off.ts';

const FAMILY = 'supply and wiring';

type Terminal = RelayParameters['terminal'];
const supplyOf = (s: FaultSubject) => s.field.supply;

function relayWelded(
  id: string,
  component: PartName,
  terminal: Terminal,
  priorWeight: number,
): Fault {
  return faultOf(
    (s) => relayOf(s, terminal),
    {
      id,
      family: FAMILY,
      component,
      mechanism: 'the contact has welded, so it stays made when the relay lets go',
      severity: BROKEN,
      onsets: NOT_INTERMITTENT,
      repair: 'replace the relay, find out what overloaded it',
      remedies: by(component, 'replace'),
      priorWeight,
    },
    (relay) => {
      relay.contact = 'welded';
    },
  );
}

function relayNotClosing(
  id: string,
  component: PartName,
  terminal: Terminal,
  priorWeight: number,
): Fault {
  return faultOf(
    (s) => relayOf(s, terminal),
    {
      id,
      family: FAMILY,
      component,
      mechanism: 'the contact is burnt and does not close',
      severity: BROKEN,
      onsets: ANY_ONSET,
      repair: 'replace the relay',
      remedies: by(component, 'replace'),
      priorWeight,
    },
    (relay) => {
      relay.contact = 'not closing';
    },
  );
}

export const SUPPLY_FAULTS: readonly Fault[] = [
  faultOf(
    (s) => s.wiring.fuses[0],
    {
      id: 'control fuse blown',
      family: FAMILY,
      component: 'control fuse',
      mechanism: 'the fuse of the control circuit is open',
      severity: BROKEN,
      onsets: ANY_ONSET,
      repair: 'find why it blew before fitting a new one',
      remedies: by('control fuse', 'replace'),
      priorWeight: 2,
    },
    (fuse) => {
      fuse.condition = 'blown';
    },
  ),
  faultOf(
    supplyOf,
    {
      id: 'mains volts low',
      family: FAMILY,
      component: 'mains supply',
      mechanism: 'the supply sags below what the controls are built for',
      severity: share('share of the nominal volts that is lost', 0.05, 0.25, 0.6),
      onsets: ANY_ONSET,
      repair: 'find the drop: supply, transformer or a bad joint',
      remedies: by('mains supply', 'report'),
      priorWeight: 1,
    },
    (supply, severity) => {
      supply.mainsVolts = Math.max(0, supply.mainsVolts - severity * supply.nominalVolts);
    },
  ),
  faultOf(
    (s) => {
      const relay = relayOf(s, 'safetyRelay');
      return relay === undefined ? undefined : { relay, wiring: s.wiring };
    },
    {
      id: 'safety relay feedback lost',
      family: FAMILY,
      component: 'safety relay',
      mechanism: 'the circuit of the feedback contact is open',
      severity: BROKEN,
      onsets: ANY_ONSET,
      repair: 'make good the feedback circuit; replace the relay if its contact is burnt',
      remedies: [
        ...by('safety relay feedback wiring', 'refit', 'tighten', 'replace'),
        ...by('safety relay', 'replace'),
      ],
      priorWeight: 1,
    },
    ({ relay, wiring }) => {
      wiring.joints.push({ terminal: `${relay.id}.feedback:1`, ohm: WIRE_OFF_OHM });
    },
  ),
  faultOf(
    (s) => s.wiring.fuses[1],
    {
      id: 'loop supply fuse blown',
      family: FAMILY,
      component: 'loop supply fuse',
      mechanism: 'the fuse of the 24 V transmitters is open',
      severity: BROKEN,
      onsets: ANY_ONSET,
      repair: 'find the loop that took too much before fitting a new one',
      remedies: by('loop supply fuse', 'replace'),
      priorWeight: 1,
    },
    (fuse) => {
      fuse.condition = 'blown';
    },
  ),
  faultOf(
    (s) => s.wiring.loads.find(({ id }) => id === 'upstream-valve'),
    {
      id: 'upstream valve coil shorted',
      family: FAMILY,
      component: 'upstream valve',
      mechanism: 'turns of the winding touch, so it takes all the current there is',
      severity: BROKEN,
      onsets: NOT_INTERMITTENT,
      repair: 'isolate, replace the coil and the fuse that it blew',
      remedies: by('upstream valve coil', 'replace'),
      priorWeight: 0.5,
    },
    (valve) => {
      valve.condition = 'shorted';
    },
  ),
  relayWelded('safety relay contact welded', 'safety relay', 'safetyRelay', 0.5),
  relayWelded('upstream valve relay welded', 'upstream valve output relay', 'upstreamValve', 0.3),
  relayWelded('pilot valve relay welded', 'pilot valve output relay', 'pilotValve', 0.3),
  relayWelded('ignition relay welded', 'ignition output relay', 'spark', 0.3),
  relayNotClosing('safety relay not closing', 'safety relay', 'safetyRelay', 1),
  relayNotClosing('pilot valve relay not closing', 'pilot valve output relay', 'pilotValve', 1),
  relayNotClosing('ignition relay not closing', 'ignition output relay', 'spark', 1),
  relayNotClosing('fan relay not closing', 'fan output relay', 'fan', 1),
  relayNotClosing(
    'downstream valve relay not closing',
    'downstream valve output relay',
    'downstreamValve',
    1,
  ),
];
