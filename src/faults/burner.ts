/** Faults of the burner itself: pilot, head, nozzles. */
import { type Fault, faultOf, NOT_INTERMITTENT, share } from './fault.ts';
import { by } from './mending.ts';
import { type FaultSubject, mainNozzlesOf } from './subject.ts';

const FAMILY = 'burner and combustion';

const pilotOf = (s: FaultSubject) => (s.flame.hasPilot ? s.flame : undefined);
const nozzlesOf = (s: FaultSubject) => {
  const nozzles = mainNozzlesOf(s);
  return nozzles.length > 0 ? nozzles : undefined;
};

export const BURNER_FAULTS: readonly Fault[] = [
  faultOf(
    pilotOf,
    {
      id: 'pilot lean',
      family: FAMILY,
      component: 'pilot burner',
      mechanism: 'air leaks in at a joint behind the pilot and leans its mixture',
      severity: { unit: 'kg/s', means: 'air leaking in', low: 0.005, typical: 0.06, high: 0.2 },
      onsets: NOT_INTERMITTENT,
      repair: 'isolate, remake the joint, leak-test',
      remedies: by('pilot burner', 'tighten', 'replace'),
      priorWeight: 1,
    },
    (pilot, severity) => {
      pilot.pilotLeakInKgS = Math.min(0.5, pilot.pilotLeakInKgS + severity);
    },
  ),
  faultOf(
    pilotOf,
    {
      id: 'pilot does not reach main',
      family: FAMILY,
      component: 'pilot burner',
      mechanism: 'the pilot is bent or set back, so its flame misses the main gas',
      severity: share('share of the pilot flame that misses', 0.5, 1, 1),
      onsets: NOT_INTERMITTENT,
      repair: 'isolate, set the pilot from the drawing',
      remedies: by('pilot burner', 'realign', 'replace'),
      priorWeight: 1,
    },
    (pilot, severity) => {
      pilot.pilotReach *= 1 - severity;
    },
  ),
  faultOf(
    nozzlesOf,
    {
      id: 'gas nozzle part blocked',
      family: FAMILY,
      component: 'main gas nozzle',
      mechanism: 'scale or burnt metal closes part of the holes',
      severity: share('share of the holes that is closed', 0.1, 0.4, 0.8),
      onsets: NOT_INTERMITTENT,
      repair: 'isolate, clear or replace the nozzle, check the flame over the whole range',
      remedies: by('main gas nozzle', 'clean', 'replace'),
      priorWeight: 1,
    },
    (nozzles, severity) => {
      for (const nozzle of nozzles) {
        nozzle.blockedFraction = Math.max(nozzle.blockedFraction, severity);
      }
    },
  ),
  faultOf(
    (s) => s.flame,
    {
      id: 'diffuser shifted',
      family: FAMILY,
      component: 'burner head',
      mechanism: 'the diffuser has slid on its tube, so the main flame has nothing to sit on',
      severity: share('how far from its place', 0.2, 0.8, 1),
      onsets: NOT_INTERMITTENT,
      repair: 'isolate, set the diffuser from the drawing and secure it',
      remedies: by('burner head', 'realign', 'replace'),
      priorWeight: 1,
    },
    (head, severity) => {
      head.diffuserShift = Math.max(head.diffuserShift, severity);
    },
  ),
  faultOf(
    (s) => s.airPath.passages,
    {
      id: 'burner head part blocked',
      family: FAMILY,
      component: 'burner head',
      mechanism: 'scale or insulation has fallen into the head',
      severity: share('share of the head that is blocked', 0.2, 0.6, 0.9),
      onsets: NOT_INTERMITTENT,
      repair: 'isolate, clear the head, check the flame over the whole range',
      remedies: by('burner head', 'clean', 'replace'),
      priorWeight: 1,
    },
    (head, severity) => {
      head.headBlockage = Math.max(head.headBlockage, Math.min(0.9, severity));
    },
  ),
];
