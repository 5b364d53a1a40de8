/** Faults of the servos of damper and fuel valve, and of what they turn. */
import { ANY_ONSET, BROKEN, type Fault, faultOf, NOT_INTERMITTENT, share } from './fault.ts';
import { END_SWITCH_CAM } from './field-dials.ts';
import { adjusting, by } from './mending.ts';
import type { PartName } from './parts.ts';
import { type FaultSubject, servoOf } from './subject.ts';

const FAMILY = 'air path';
const FULL_STROKE_DEG = 90;

type Moved = 'damper' | 'fuel valve';

const SERVO_OF = {
  damper: 'damper servo',
  'fuel valve': 'fuel valve servo',
} as const satisfies Record<Moved, PartName>;
const TURNED_BY = {
  damper: 'air damper',
  'fuel valve': 'fuel control valve',
} as const satisfies Record<Moved, PartName>;

const movedBy = (what: Moved) => (s: FaultSubject) => servoOf(s, what);
const damper = movedBy('damper');

function motorDead(what: Moved, priorWeight: number): Fault {
  return faultOf(
    movedBy(what),
    {
      id: `${what} servo motor dead`,
      family: FAMILY,
      component: `${what} servo`,
      mechanism: 'the winding or the motor output has failed',
      severity: BROKEN,
      onsets: ANY_ONSET,
      repair: 'replace the servo, set its points again',
      remedies: by(SERVO_OF[what], 'replace'),
      priorWeight,
    },
    (servo) => {
      servo.motorHealth = 0;
    },
  );
}

/** One servo on both shafts has one motor: the damper's faults then stand for both. */
const ownFuelServo = (fault: Fault): Fault => ({
  ...fault,
  appliesTo: (s) => fault.appliesTo(s) && servoOf(s, 'fuel valve') !== servoOf(s, 'damper'),
});

function shaftSticks(what: Moved, priorWeight: number): Fault {
  return faultOf(
    movedBy(what),
    {
      id: `${what} shaft sticks`,
      family: FAMILY,
      component: `${what} servo`,
      mechanism: 'dry bearings hold the shaft until the coupling is wound up, then it jumps',
      severity: {
        unit: '°',
        means: 'wind-up before it breaks away',
        low: 0.5,
        typical: 4,
        high: 12,
      },
      onsets: NOT_INTERMITTENT,
      repair: 'isolate, lock off, free and grease the bearings, stroke it by hand',
      remedies: by(TURNED_BY[what], 'free', 'replace'),
      priorWeight,
    },
    (servo, severity) => {
      servo.stictionDeg = Math.min(20, servo.stictionDeg + severity);
    },
  );
}

function deadbandWide(what: Moved, priorWeight: number): Fault {
  return faultOf(
    movedBy(what),
    {
      id: `${what} servo deadband wide`,
      family: FAMILY,
      component: `${what} servo`,
      mechanism: 'the positioner was made less sensitive, so small errors stay',
      severity: { unit: '°', means: 'added to the deadband', low: 0.3, typical: 1.5, high: 4 },
      onsets: NOT_INTERMITTENT,
      repair: 'set the deadband from the commissioning sheet',
      remedies: [...adjusting(SERVO_OF[what], 'deadband'), ...by(SERVO_OF[what], 'replace')],
      priorWeight,
    },
    (servo, severity) => {
      servo.deadbandDeg = Math.min(5, servo.deadbandDeg + severity);
    },
  );
}

export const SERVO_FAULTS: readonly Fault[] = [
  faultOf(
    damper,
    {
      id: 'damper jammed short of purge',
      family: FAMILY,
      component: 'air damper',
      mechanism:
        'something solid in the duct or linkage stops the shaft before the end of its stroke',
      severity: { unit: '°', means: 'short of the full stroke', low: 1, typical: 25, high: 80 },
      onsets: ANY_ONSET,
      repair: 'isolate, lock off, free the damper, stroke it by hand',
      remedies: by('air damper', 'free', 'replace'),
      priorWeight: 3,
    },
    (servo, severity) => {
      servo.jamMaxDeg = Math.min(servo.jamMaxDeg, FULL_STROKE_DEG - severity);
    },
  ),
  faultOf(
    damper,
    {
      id: 'damper shaft slipped',
      family: FAMILY,
      component: 'air damper',
      mechanism: 'the blade has turned on its shaft; the feedback still looks right',
      severity: { unit: '°', means: 'blade behind its shaft', low: 5, typical: 30, high: 80 },
      onsets: NOT_INTERMITTENT,
      repair: 'refit and pin the blade, check blade against feedback over the stroke',
      remedies: by('air damper', 'refit', 'replace'),
      priorWeight: 2,
    },
    (servo, severity) => {
      servo.slipDeg = Math.max(-90, servo.slipDeg - severity);
    },
  ),
  faultOf(
    damper,
    {
      id: 'damper servo slow',
      family: FAMILY,
      component: 'damper servo',
      mechanism: 'dry bearings or low torque slow the stroke',
      severity: share('share of the speed that is lost', 0.3, 0.75, 0.95),
      onsets: ANY_ONSET,
      repair: 'free the linkage, replace the servo',
      remedies: [...by('damper servo', 'free', 'replace'), ...by('air damper', 'free')],
      priorWeight: 1,
    },
    (servo, severity) => {
      servo.motorHealth *= 1 - severity;
    },
  ),
  motorDead('damper', 2),
  ownFuelServo(motorDead('fuel valve', 1)),
  shaftSticks('damper', 1),
  ownFuelServo(shaftSticks('fuel valve', 1)),
  deadbandWide('damper', 0.5),
  ownFuelServo(deadbandWide('fuel valve', 0.5)),
  faultOf(
    damper,
    {
      id: 'damper feedback offset',
      family: FAMILY,
      component: 'damper servo',
      mechanism: 'the feedback track has turned on the shaft, so it reads high',
      severity: { unit: '°', means: 'reads this much too high', low: 1, typical: 10, high: 40 },
      onsets: NOT_INTERMITTENT,
      repair: 'set the feedback against the blade',
      remedies: [
        ...by('damper servo feedback', 'realign', 'replace'),
        ...by('damper servo', 'replace'),
      ],
      priorWeight: 1,
    },
    (servo, severity) => {
      servo.feedbackOffsetDeg += severity;
    },
  ),
  faultOf(
    damper,
    {
      id: 'damper feedback track worn',
      family: FAMILY,
      component: 'damper servo',
      mechanism: 'the wiper jumps on a worn track',
      severity: { unit: '°', means: 'scatter of the feedback', low: 0.5, typical: 4, high: 15 },
      onsets: NOT_INTERMITTENT,
      repair: 'replace the feedback element',
      remedies: [...by('damper servo feedback', 'replace'), ...by('damper servo', 'replace')],
      priorWeight: 1,
    },
    (servo, severity) => {
      servo.feedbackNoiseDeg = Math.min(30, servo.feedbackNoiseDeg + severity);
    },
  ),
  faultOf(
    damper,
    {
      id: 'damper feedback open circuit',
      family: FAMILY,
      component: 'damper servo',
      mechanism: 'the feedback wire is broken',
      severity: BROKEN,
      onsets: ANY_ONSET,
      repair: 'make good the wire',
      remedies: by('damper feedback wiring', 'refit', 'replace'),
      priorWeight: 1,
    },
    (servo) => {
      servo.feedback = 'open';
    },
  ),
  faultOf(
    (s) => {
      const servo = damper(s);
      return servo?.endSwitch === 'fitted' ? servo : undefined;
    },
    {
      id: 'purge end switch out of adjustment',
      family: FAMILY,
      component: 'damper servo',
      mechanism: 'the cam of the end switch has moved past the end of the stroke',
      severity: { unit: '°', means: 'switch point moved up', low: 2, typical: 5, high: 20 },
      onsets: NOT_INTERMITTENT,
      repair: 'set the cam and prove it by stroking',
      remedies: [...adjusting('damper servo', END_SWITCH_CAM), ...by('damper servo', 'replace')],
      priorWeight: 1,
    },
    (servo, severity) => {
      servo.endSwitchDeg += severity;
    },
  ),
];
