/** Faults of the burner and of what it burns. */
import { type Fault, NOT_INTERMITTENT, share } from './fault.ts';

const FAMILY = 'burner and combustion';

export const BURNER_FAULTS: readonly Fault[] = [
  {
    id: 'pilot lean',
    family: FAMILY,
    component: 'pilot burner',
    mechanism: 'air leaks in at a joint behind the pilot and leans its mixture',
    severity: { unit: 'kg/s', means: 'air leaking in', low: 0.005, typical: 0.06, high: 0.2 },
    onsets: NOT_INTERMITTENT,
    repair: 'isolate, remake the joint, leak-test',
    priorWeight: 1,
    appliesTo: (s) => s.flame.hasPilot,
    apply: (s, severity) => {
      s.flame.pilotLeakInKgS = Math.min(0.5, s.flame.pilotLeakInKgS + severity);
    },
  },
  {
    id: 'pilot does not reach main',
    family: FAMILY,
    component: 'pilot burner',
    mechanism: 'the pilot is bent or set back, so its flame misses the main gas',
    severity: share('share of the pilot flame that misses', 0.5, 1, 1),
    onsets: NOT_INTERMITTENT,
    repair: 'isolate, set the pilot from the drawing',
    priorWeight: 1,
    appliesTo: (s) => s.flame.hasPilot,
    apply: (s, severity) => {
      s.flame.pilotReach *= 1 - severity;
    },
  },
  {
    id: 'diffuser shifted',
    family: FAMILY,
    component: 'burner head',
    mechanism: 'the diffuser has slid on its tube, so the main flame has nothing to sit on',
    severity: share('how far from its place', 0.2, 0.8, 1),
    onsets: NOT_INTERMITTENT,
    repair: 'isolate, set the diffuser from the drawing and secure it',
    priorWeight: 1,
    appliesTo: () => true,
    apply: (s, severity) => {
      s.flame.diffuserShift = Math.max(s.flame.diffuserShift, severity);
    },
  },
  {
    id: 'burner head part blocked',
    family: FAMILY,
    component: 'burner head',
    mechanism: 'scale or insulation has fallen into the head',
    severity: share('share of the head that is blocked', 0.2, 0.6, 0.9),
    onsets: NOT_INTERMITTENT,
    repair: 'isolate, clear the head, check the flame over the whole range',
    priorWeight: 1,
    appliesTo: () => true,
    apply: (s, severity) => {
      const p = s.airPath.passages;
      p.headBlockage = Math.max(p.headBlockage, Math.min(0.9, severity));
    },
  },
  {
    id: 'light-off point set lean',
    family: FAMILY,
    component: 'fuel and air points',
    mechanism: 'the light-off damper point was opened up at the last visit',
    severity: {
      unit: '°',
      means: 'damper further open at light-off',
      low: 2,
      typical: 20,
      high: 50,
    },
    onsets: NOT_INTERMITTENT,
    repair: 'set the point from the commissioning sheet, check with an analyser',
    priorWeight: 2,
    appliesTo: () => true,
    apply: (s, severity) => {
      const points = s.control.points;
      points.lightOffDamperDeg = Math.min(90, points.lightOffDamperDeg + severity);
    },
  },
  {
    id: 'light-off point set rich',
    family: FAMILY,
    component: 'fuel and air points',
    mechanism: 'the light-off damper point was closed in at the last visit',
    severity: {
      unit: '°',
      means: 'damper further shut at light-off',
      low: 2,
      typical: 12,
      high: 30,
    },
    onsets: NOT_INTERMITTENT,
    repair: 'set the point from the commissioning sheet, check with an analyser',
    priorWeight: 1,
    appliesTo: () => true,
    apply: (s, severity) => {
      const points = s.control.points;
      points.lightOffDamperDeg = Math.max(0, points.lightOffDamperDeg - severity);
    },
  },
];
