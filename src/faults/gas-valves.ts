/** Faults of the powered valves of the fuel train and of what proves them shut. */
import {
  ANY_ONSET,
  BROKEN,
  type Fault,
  faultOf,
  NOT_INTERMITTENT,
  type SeverityRange,
  share,
} from './fault.ts';
import { adjusting, by } from './mending.ts';
import { closedProofOf, edgeOf, type FaultSubject } from './subject.ts';
import { SWITCH_POINT } from './switch-dials.ts';

const FAMILY = 'fuel train';

type ValveName = 'upstream' | 'downstream' | 'vent' | 'pilot';

/** A seat in good order passes about 0.1 dm³/h; a burner may be run with the low end of this. */
const LEAK: SeverityRange = {
  unit: 'dm³/h',
  means: 'leak of the shut seat at 100 mbar',
  low: 5,
  typical: 800,
  high: 4000,
};

const valveOf = (name: ValveName) => (s: FaultSubject) => edgeOf(s, 'shutoff', `${name}-valve`);
const downstreamProof = (s: FaultSubject) => closedProofOf(s, 'downstream valve');

function seatPasses(valve: ValveName, priorWeight: number): Fault {
  return faultOf(
    valveOf(valve),
    {
      id: `${valve} valve seat passes`,
      family: FAMILY,
      component: `${valve} valve`,
      mechanism: 'dirt or wear on the seat leaves a gap when the valve is shut',
      severity: LEAK,
      onsets: NOT_INTERMITTENT,
      repair: 'isolate, replace the valve or its seat, leak-test',
      remedies: by(`${valve} valve`, 'clean', 'replace'),
      priorWeight,
    },
    (seat, severity) => {
      seat.seatLeakDm3H += severity;
    },
  );
}

function coilOpen(valve: ValveName, priorWeight: number): Fault {
  return faultOf(
    (s) => s.wiring.loads.find(({ id }) => id === `${valve}-valve`),
    {
      id: `${valve} valve coil open`,
      family: FAMILY,
      component: `${valve} valve`,
      mechanism: 'the winding is broken, so the valve draws no current and stays as it rests',
      severity: BROKEN,
      onsets: ANY_ONSET,
      repair: 'replace the coil',
      remedies: by(`${valve} valve coil`, 'replace'),
      priorWeight,
    },
    (coil) => {
      coil.condition = 'open';
    },
  );
}

function sticksPartOpen(valve: ValveName, priorWeight: number): Fault {
  return faultOf(
    valveOf(valve),
    {
      id: `${valve} valve sticks part open`,
      family: FAMILY,
      component: `${valve} valve`,
      mechanism: 'dirt under the plug keeps the stem from closing',
      severity: share('share of the stroke that stays open', 0.05, 0.2, 0.6),
      onsets: NOT_INTERMITTENT,
      repair: 'isolate, replace the valve, leak-test',
      remedies: by(`${valve} valve`, 'clean', 'replace'),
      priorWeight,
    },
    (stem, severity) => {
      stem.stuckOpenFraction = Math.max(stem.stuckOpenFraction, severity);
    },
  );
}

function sticksShut(valve: ValveName, priorWeight: number): Fault {
  return faultOf(
    valveOf(valve),
    {
      id: `${valve} valve stuck shut`,
      family: FAMILY,
      component: `${valve} valve`,
      mechanism: 'the stem is seized on its seat',
      severity: share('share of the stroke that is lost', 0.5, 1, 1),
      onsets: NOT_INTERMITTENT,
      repair: `replace the ${valve} valve`,
      remedies: by(`${valve} valve`, 'replace'),
      priorWeight,
    },
    (stem, severity) => {
      stem.stuckShutFraction = Math.min(stem.stuckShutFraction, 1 - severity);
    },
  );
}

function closedProofStuck(contact: 'welded' | 'open', words: string, priorWeight: number): Fault {
  return faultOf(
    downstreamProof,
    {
      id: `proof-of-closure switch stuck ${words}`,
      family: FAMILY,
      component: 'downstream valve proof of closure',
      mechanism: `the switch contact stays ${words} whatever the stem does`,
      severity: BROKEN,
      onsets: ANY_ONSET,
      repair: 'replace the switch and prove its switch point',
      remedies: by('downstream valve proof of closure', 'replace'),
      priorWeight,
    },
    (proof) => {
      proof.contact = contact;
    },
  );
}

export const GAS_VALVE_FAULTS: readonly Fault[] = [
  seatPasses('upstream', 3),
  seatPasses('downstream', 3),
  seatPasses('vent', 2),
  seatPasses('pilot', 1),
  sticksShut('vent', 1),
  sticksShut('pilot', 1),
  coilOpen('upstream', 2),
  coilOpen('downstream', 2),
  coilOpen('pilot', 3),
  coilOpen('vent', 1),
  sticksPartOpen('upstream', 0.5),
  sticksPartOpen('downstream', 1),
  closedProofStuck('welded', 'made', 1),
  closedProofStuck('open', 'open', 2),
  faultOf(
    (s) => closedProofOf(s, 'upstream valve'),
    {
      id: 'proof-of-closure switch out of adjustment',
      family: FAMILY,
      component: 'upstream valve proof of closure',
      mechanism: 'the switch point has moved beyond the end of the seal over-travel',
      severity: share('how far it moved, in over-travels', 0.3, 1, 2),
      onsets: NOT_INTERMITTENT,
      repair: 'set the switch point within the seal over-travel and prove it',
      remedies: [
        ...adjusting('upstream valve proof of closure', SWITCH_POINT),
        ...by('upstream valve proof of closure', 'replace'),
      ],
      priorWeight: 2,
    },
    (proof, severity) => {
      proof.adjustment = Math.max(-1, proof.adjustment - severity);
    },
  ),
];
