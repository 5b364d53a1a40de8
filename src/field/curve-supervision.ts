import { number, type ParameterTable, type Values } from '../quantity/index.ts';
import { type Contact, type ContactBoard, createContact, moveContact } from './contact.ts';
import { createFollower, type Follower, follow } from './follower.ts';

/**
 * Watches that air, speed and fuel stand where the curve wants them, while the curve commands.
 *
 * A device on its way is not off its curve: beside the commanded point runs a slow twin that moves
 * at the slowest speed still allowed; the feedback may be anywhere between twin and command, and
 * outside that by the tolerance, for the time. Before low fire is commanded both are true.
 */
export const curveSupervisionParameters = {
  toleranceDeg: number('°', 0.5, 45, 'positions: this far off the curve', 4),
  toleranceRpm: number('rpm', 5, 1000, 'speed: this far off the curve', 80),
  positionTimeS: number('s', 0.1, 60, 'for so long', 3),
  speedTimeS: number('s', 0.1, 60, 'for so long', 3),
  strokeS: number('s', 1, 600, 'slowest full stroke (90°) still allowed', 45),
  runUpS: number('s', 1, 600, 'slowest run from rest to full speed still allowed', 40),
} as const satisfies ParameterTable;
export type CurveSupervisionParameters = Values<typeof curveSupervisionParameters>;

export interface CurveSupervision {
  readonly parameters: CurveSupervisionParameters;
  readonly positionsContact: Contact;
  readonly speedContact: Contact;
  readonly positions: Follower;
  readonly speed: Follower;
  readonly twins: Float64Array;
  applies: boolean;
}

const DAMPER = 0;
const FUEL_VALVE = 1;
const FAN = 2;
/** Back on the curve counts at once. */
const RETURN_S = 0;

export function createCurveSupervision(
  parameters: CurveSupervisionParameters,
  board: ContactBoard,
): CurveSupervision {
  return {
    parameters,
    positionsContact: createContact(board, true),
    speedContact: createContact(board, true),
    positions: createFollower(true),
    speed: createFollower(true),
    twins: new Float64Array(3),
    applies: false,
  };
}

/** @param fullRpm speed the fan's run-up time refers to */
export function stepCurveSupervision(
  s: CurveSupervision,
  applies: boolean,
  damperTargetDeg: number,
  damperDeg: number,
  fuelTargetDeg: number,
  fuelDeg: number,
  fanTargetRpm: number,
  fanRpm: number,
  fullRpm: number,
  stepS: number,
): void {
  if (!applies && !s.applies && s.positions.made && s.speed.made) return;
  const p = s.parameters;
  const twins = s.twins;
  if (!applies || !s.applies) {
    s.applies = applies;
    twins[DAMPER] = damperDeg;
    twins[FUEL_VALVE] = fuelDeg;
    twins[FAN] = fanRpm;
  }
  const travelDeg = (90 * stepS) / p.strokeS;
  const travelRpm = (fullRpm * stepS) / p.runUpS;
  const damperOn = within(twins, DAMPER, damperTargetDeg, damperDeg, p.toleranceDeg, travelDeg);
  const fuelOn = within(twins, FUEL_VALVE, fuelTargetDeg, fuelDeg, p.toleranceDeg, travelDeg);
  const speedOn = within(twins, FAN, fanTargetRpm, fanRpm, p.toleranceRpm, travelRpm);
  const positionsOn = !applies || (damperOn && fuelOn);
  const speedTrue = !applies || speedOn;
  const positionDelayS = positionsOn ? RETURN_S : p.positionTimeS;
  const speedDelayS = speedTrue ? RETURN_S : p.speedTimeS;
  moveContact(s.positionsContact, follow(s.positions, positionsOn, positionDelayS, stepS));
  moveContact(s.speedContact, follow(s.speed, speedTrue, speedDelayS, stepS));
}

function within(
  twins: Float64Array,
  index: number,
  target: number,
  value: number,
  tolerance: number,
  travel: number,
): boolean {
  const twin = twins[index] as number;
  const ahead = target - twin;
  const moved = ahead > travel ? twin + travel : ahead < -travel ? twin - travel : target;
  twins[index] = moved;
  const low = Math.min(moved, target);
  const high = Math.max(moved, target);
  return value >= low - tolerance && value <= high + tolerance;
}
