import type { Field } from './field.ts';

/**
 * Puts a hand on a servo, or takes it away: the servo then goes where its controller wants it.
 *
 * @param deg where the hand holds the motor shaft, 0 to 90; below 0 lets go
 * @returns false where the plant has no such servo
 */
export function holdServo(field: Field, id: string, deg: number): boolean {
  const servo = field.servos.find(({ parameters }) => parameters.id === id);
  if (servo === undefined) return false;
  servo.heldDeg = deg < 0 ? Number.NaN : deg;
  servo.moving = false;
  servo.resting = false;
  servo.provedDeg = Number.NaN;
  field.aimsRest = false;
  field.positionsRest = false;
  return true;
}
