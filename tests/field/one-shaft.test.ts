import { describe, expect, it } from 'vitest';
import {
  COMMAND_BITS,
  createField,
  createReadings,
  driveField,
  type Field,
  prepareField,
  readField,
  settleField,
  TARGET_INDEX,
} from '../../src/field/index.ts';
import { library } from '../support/library.ts';

const STEP_S = 0.01;

function schoolField(): Field {
  const plant = library.plants.find(({ id }) => id === 'school');
  const field = createField(structuredClone(plant) as NonNullable<typeof plant>, 1);
  settleField(field, createReadings());
  return field;
}

function run(field: Field, target: number, seconds: number): void {
  const readings = createReadings();
  const commands = COMMAND_BITS.safetyRelay | COMMAND_BITS.fan;
  for (let i = 0; i < Math.round(seconds / STEP_S); i++) {
    driveField(field, commands, target, readings, STEP_S);
    readField(field, readings, STEP_S);
  }
}

describe('one servo for damper and fuel valve', () => {
  it('moves both together, and its one position proves both', () => {
    const field = schoolField();
    run(field, TARGET_INDEX['light-off'], 20);
    const { lightOffDamperDeg } = field.parameters.control.points;
    const { damperBladeDeg, fuelValveBladeDeg, damperFeedbackDeg, fuelValveFeedbackDeg } =
      field.outputs;
    expect(Math.abs(damperBladeDeg - lightOffDamperDeg)).toBeLessThan(0.5);
    expect(fuelValveBladeDeg).toBe(damperBladeDeg);
    expect(fuelValveFeedbackDeg).toBe(damperFeedbackDeg);
  });

  it('keeps the fuel valve where the shaft is when the damper has slipped on it', () => {
    const field = schoolField();
    const servo = field.parameters.field.servos[0];
    if (servo === undefined) throw new Error('no servo');
    (servo as { slipDeg: number }).slipDeg = -10;
    prepareField(field);
    run(field, TARGET_INDEX['light-off'], 20);
    const { damperBladeDeg, fuelValveBladeDeg, damperShaftDeg } = field.outputs;
    expect(fuelValveBladeDeg).toBeCloseTo(damperShaftDeg, 9);
    expect(damperBladeDeg).toBeCloseTo(fuelValveBladeDeg - 10, 9);
  });
});
