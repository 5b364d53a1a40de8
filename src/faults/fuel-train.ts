/** Faults of the fuel train. */
import {
  ANY_ONSET,
  BROKEN,
  type Fault,
  isBroken,
  NOT_INTERMITTENT,
  type SeverityRange,
  share,
} from './fault.ts';
import { closedProofOf, edgeOf, type FaultSubject, relayOf, switchOf } from './subject.ts';

const FAMILY = 'fuel train';
const UPSTREAM = 'upstream-valve';
const DOWNSTREAM = 'downstream-valve';
const VENT = 'vent-valve';
const PILOT = 'pilot-valve';

/** A seat in good order passes about 0.1 dm³/h; the low end here is past any proving limit's noise. */
const LEAK: SeverityRange = {
  unit: 'dm³/h',
  means: 'leak of the shut seat at 100 mbar',
  low: 20,
  typical: 800,
  high: 4000,
};

function seatPasses(valve: string, edge: string, priorWeight: number): Fault {
  return {
    id: `${valve} valve seat passes`,
    family: FAMILY,
    component: `${valve} valve`,
    mechanism: 'dirt or wear on the seat leaves a gap when the valve is shut',
    severity: LEAK,
    onsets: NOT_INTERMITTENT,
    repair: 'isolate, replace the valve or its seat, leak-test',
    priorWeight,
    appliesTo: (s) => edgeOf(s, 'shutoff', edge) !== undefined,
    apply: (s, severity) => {
      const seat = edgeOf(s, 'shutoff', edge);
      if (seat !== undefined) seat.seatLeakDm3H += severity;
    },
  };
}

function coilOpen(valve: string, edge: string, priorWeight: number): Fault {
  return {
    id: `${valve} valve coil open`,
    family: FAMILY,
    component: `${valve} valve`,
    mechanism: 'the winding is broken, so the valve draws no current and stays as it rests',
    severity: BROKEN,
    onsets: ANY_ONSET,
    repair: 'replace the coil',
    priorWeight,
    appliesTo: (s) => edgeOf(s, 'shutoff', edge) !== undefined,
    apply: (s, severity) => {
      const valveEdge = edgeOf(s, 'shutoff', edge);
      if (valveEdge !== undefined && isBroken(severity)) valveEdge.coilIntact = false;
    },
  };
}

function closedProofStuck(contact: 'welded' | 'open', words: string, priorWeight: number): Fault {
  return {
    id: `proof-of-closure switch stuck ${words}`,
    family: FAMILY,
    component: 'downstream valve proof of closure',
    mechanism: `the switch contact stays ${words} whatever the stem does`,
    severity: BROKEN,
    onsets: ANY_ONSET,
    repair: 'replace the switch and prove its switch point',
    priorWeight,
    appliesTo: (s) => closedProofOf(s, 'downstream valve') !== undefined,
    apply: (s, severity) => {
      const proof = closedProofOf(s, 'downstream valve');
      if (proof !== undefined && isBroken(severity)) proof.contact = contact;
    },
  };
}

function regulatorOf(s: FaultSubject) {
  return edgeOf(s, 'regulator', 'regulator') ?? edgeOf(s, 'regulator');
}

export const FUEL_TRAIN_FAULTS: readonly Fault[] = [
  seatPasses('upstream', UPSTREAM, 3),
  seatPasses('downstream', DOWNSTREAM, 3),
  seatPasses('vent', VENT, 2),
  {
    id: 'vent valve stuck shut',
    family: FAMILY,
    component: 'vent valve',
    mechanism: 'the stem is seized on its seat',
    severity: share('share of the stroke that is lost', 0.9, 1, 1),
    onsets: NOT_INTERMITTENT,
    repair: 'replace the vent valve',
    priorWeight: 1,
    appliesTo: (s) => edgeOf(s, 'shutoff', VENT) !== undefined,
    apply: (s, severity) => {
      const vent = edgeOf(s, 'shutoff', VENT);
      if (vent !== undefined)
        vent.stuckShutFraction = Math.min(vent.stuckShutFraction, 1 - severity);
    },
  },
  coilOpen('upstream', UPSTREAM, 2),
  coilOpen('downstream', DOWNSTREAM, 2),
  coilOpen('pilot', PILOT, 3),
  {
    id: 'downstream valve sticks part open',
    family: FAMILY,
    component: 'downstream valve',
    mechanism: 'dirt under the plug keeps the stem from closing',
    severity: share('share of the stroke that stays open', 0.05, 0.2, 0.6),
    onsets: NOT_INTERMITTENT,
    repair: 'isolate, replace the valve, leak-test',
    priorWeight: 1,
    appliesTo: (s) => edgeOf(s, 'shutoff', DOWNSTREAM) !== undefined,
    apply: (s, severity) => {
      const valve = edgeOf(s, 'shutoff', DOWNSTREAM);
      if (valve !== undefined) {
        valve.stuckOpenFraction = Math.max(valve.stuckOpenFraction, severity);
      }
    },
  },
  closedProofStuck('welded', 'made', 1),
  closedProofStuck('open', 'open', 2),
  {
    id: 'proof-of-closure switch out of adjustment',
    family: FAMILY,
    component: 'upstream valve proof of closure',
    mechanism: 'the switch point has moved beyond the end of the seal over-travel',
    severity: share('how far beyond, in over-travels', 0.7, 1, 2),
    onsets: NOT_INTERMITTENT,
    repair: 'set the switch point within the seal over-travel and prove it',
    priorWeight: 2,
    appliesTo: (s) => closedProofOf(s, 'upstream valve') !== undefined,
    apply: (s, severity) => {
      const proof = closedProofOf(s, 'upstream valve');
      if (proof !== undefined) proof.adjustment = Math.max(-1, proof.adjustment - severity);
    },
  },
  {
    id: 'pilot orifice blocked',
    family: FAMILY,
    component: 'pilot orifice',
    mechanism: 'dirt closes part of the hole',
    severity: share('share of the hole that is closed', 0.3, 0.9, 1),
    onsets: NOT_INTERMITTENT,
    repair: 'isolate, clean the orifice, leak-test',
    priorWeight: 3,
    appliesTo: (s) => edgeOf(s, 'orifice', 'pilot-orifice') !== undefined,
    apply: (s, severity) => {
      const orifice = edgeOf(s, 'orifice', 'pilot-orifice');
      if (orifice !== undefined) {
        orifice.blockedFraction = Math.max(orifice.blockedFraction, severity);
      }
    },
  },
  {
    id: 'pilot regulator low',
    family: FAMILY,
    component: 'pilot regulator',
    mechanism: 'the spring is set back or has lost force',
    severity: share('share of the set pressure that is lost', 0.3, 0.85, 0.95),
    onsets: NOT_INTERMITTENT,
    repair: 'set the pilot pressure with a manometer on the pilot test point',
    priorWeight: 1,
    appliesTo: (s) => edgeOf(s, 'regulator', 'pilot-regulator') !== undefined,
    apply: (s, severity) => {
      const regulator = edgeOf(s, 'regulator', 'pilot-regulator');
      if (regulator !== undefined) {
        regulator.setpointPa = Math.max(100, regulator.setpointPa * (1 - severity));
      }
    },
  },
  {
    id: 'strainer blocked',
    family: FAMILY,
    component: 'strainer',
    mechanism: 'pipe scale and dust fill the mesh',
    severity: share('share of the free area that is closed', 0.5, 0.9, 0.99),
    onsets: NOT_INTERMITTENT,
    repair: 'isolate, clean the strainer, leak-test',
    priorWeight: 2,
    appliesTo: (s) => edgeOf(s, 'strainer') !== undefined,
    apply: (s, severity) => {
      const strainer = edgeOf(s, 'strainer');
      if (strainer !== undefined) {
        strainer.blockedFraction = Math.max(strainer.blockedFraction, severity);
      }
    },
  },
  {
    id: 'regulator droops',
    family: FAMILY,
    component: 'gas regulator',
    mechanism: 'a weak spring or a torn diaphragm lets the outlet fall as flow is drawn',
    severity: {
      unit: 'Pa',
      means: 'further fall of the outlet over the full stroke',
      low: 1000,
      typical: 5000,
      high: 9000,
    },
    onsets: NOT_INTERMITTENT,
    repair: 'isolate, replace spring and diaphragm, set the outlet under flow',
    priorWeight: 2,
    appliesTo: (s) => regulatorOf(s) !== undefined,
    apply: (s, severity) => {
      const regulator = regulatorOf(s);
      if (regulator !== undefined) regulator.droopPa += severity;
    },
  },
  {
    id: 'regulator creeps',
    family: FAMILY,
    component: 'gas regulator',
    mechanism: 'a dirty seat passes gas when no flow is drawn, so the outlet climbs',
    severity: {
      unit: 'dm³/h',
      means: 'leak of the shut seat at 100 mbar',
      low: 20,
      typical: 400,
      high: 4000,
    },
    onsets: NOT_INTERMITTENT,
    repair: 'isolate, clean or replace the seat, check the lock-up pressure',
    priorWeight: 2,
    appliesTo: (s) => regulatorOf(s) !== undefined,
    apply: (s, severity) => {
      const regulator = regulatorOf(s);
      if (regulator !== undefined) regulator.seatLeakDm3H += severity;
    },
  },
  {
    id: 'regulator hunts',
    family: FAMILY,
    component: 'gas regulator',
    mechanism: 'the breather is blocked, so the diaphragm answers late and swings',
    severity: share('share of the breather that is closed', 0.6, 0.97, 0.995),
    onsets: NOT_INTERMITTENT,
    repair: 'clear the breather and its vent line',
    priorWeight: 1,
    appliesTo: (s) => regulatorOf(s) !== undefined,
    apply: (s, severity) => {
      const regulator = regulatorOf(s);
      if (regulator !== undefined) {
        regulator.breatherBlockedFraction = Math.max(regulator.breatherBlockedFraction, severity);
      }
    },
  },
  {
    id: 'supply pressure low',
    family: FAMILY,
    component: 'gas supply',
    mechanism: 'the main delivers less than it was designed for',
    severity: {
      unit: 'Pa',
      means: 'fall of the pressure in the main',
      low: 5000,
      typical: 16000,
      high: 19000,
    },
    onsets: ANY_ONSET,
    repair: 'report to the supplier; do not compensate at the regulator',
    priorWeight: 1,
    appliesTo: () => true,
    apply: (s, severity) => {
      s.gasTrain.supply.pressureGaugePa = Math.max(0, s.gasTrain.supply.pressureGaugePa - severity);
    },
  },
  {
    id: 'low-gas switch drifted up',
    family: FAMILY,
    component: 'low-gas pressure switch',
    mechanism: 'its switch point has moved up',
    severity: {
      unit: 'Pa',
      means: 'rise of the switch point',
      low: 1000,
      typical: 5000,
      high: 9000,
    },
    onsets: NOT_INTERMITTENT,
    repair: 'set or replace the switch, prove it with a manometer',
    priorWeight: 2,
    appliesTo: (s) => switchOf(s, 'gasPressureAboveLow') !== undefined,
    apply: (s, severity) => {
      const low = switchOf(s, 'gasPressureAboveLow');
      if (low !== undefined) low.driftPa += severity;
    },
  },
  {
    id: 'low-gas switch contact open',
    family: FAMILY,
    component: 'low-gas pressure switch',
    mechanism: 'the contact no longer closes',
    severity: BROKEN,
    onsets: ANY_ONSET,
    repair: 'replace the switch',
    priorWeight: 1,
    appliesTo: (s) => switchOf(s, 'gasPressureAboveLow') !== undefined,
    apply: (s, severity) => {
      const low = switchOf(s, 'gasPressureAboveLow');
      if (low !== undefined && isBroken(severity)) low.contact = 'open';
    },
  },
  {
    id: 'high-gas switch drifted down',
    family: FAMILY,
    component: 'high-gas pressure switch',
    mechanism: 'its switch point has moved down',
    severity: {
      unit: 'Pa',
      means: 'fall of the switch point',
      low: 1000,
      typical: 5000,
      high: 9000,
    },
    onsets: NOT_INTERMITTENT,
    repair: 'set or replace the switch, prove it with a manometer',
    priorWeight: 1,
    appliesTo: (s) => switchOf(s, 'gasPressureBelowHigh') !== undefined,
    apply: (s, severity) => {
      const high = switchOf(s, 'gasPressureBelowHigh');
      if (high !== undefined) high.driftPa -= severity;
    },
  },
  {
    id: 'fuel control valve slipped on its servo',
    family: FAMILY,
    component: 'fuel control valve',
    mechanism: 'the coupling has turned on the shaft; the feedback still looks right',
    severity: { unit: '°', means: 'blade behind its shaft', low: 3, typical: 12, high: 40 },
    onsets: NOT_INTERMITTENT,
    repair: 'refit and pin the coupling, check blade against feedback over the stroke',
    priorWeight: 1,
    appliesTo: (s) => edgeOf(s, 'control') !== undefined,
    apply: (s, severity) => {
      const valve = edgeOf(s, 'control');
      if (valve !== undefined) valve.shaftSlipDeg -= severity;
    },
  },
  {
    id: 'upstream valve relay welded',
    family: FAMILY,
    component: 'upstream valve output relay',
    mechanism: 'the contact has welded, so the valve stays energised while the safety relay is in',
    severity: BROKEN,
    onsets: NOT_INTERMITTENT,
    repair: 'replace the relay',
    priorWeight: 0.3,
    appliesTo: (s) => relayOf(s, 'upstreamValve') !== undefined,
    apply: (s, severity) => {
      const relay = relayOf(s, 'upstreamValve');
      if (relay !== undefined && isBroken(severity)) relay.contact = 'welded';
    },
  },
];
