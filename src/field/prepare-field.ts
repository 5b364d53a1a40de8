import { prepareAirChangeCounter } from './air-change-counter.ts';
import { prepareClosedProof } from './closed-proof.ts';
import { prepareCurve } from './curve.ts';
import { prepareDrive } from './drive.ts';
import { type Field, SLOW_STEP_S } from './field.ts';
import { prepareFlameRelay } from './flame-relay.ts';
import { prepareFlameSensor } from './flame-sensor.ts';
import { prepareIgnitionTransformer } from './ignition-transformer.ts';
import { prepareInterspaceComparator } from './interspace-comparator.ts';
import { isSlowTransmitter } from './pace.ts';
import { preparePressureSwitch } from './pressure-switch.ts';
import { prepareRelay } from './relay.ts';
import { prepareServo } from './servo.ts';
import { prepareSupply } from './supply.ts';
import { prepareTransmitter } from './transmitter.ts';
import { prepareWaterCutOff } from './water-cut-off.ts';

/** After any change of a parameter or of the step: derived constants anew, state untouched. */
export function prepareField(field: Field): void {
  const { stepS } = field;
  const { points, firingRate } = field.parameters.control;
  prepareSupply(field.supply);
  field.relays.forEach(prepareRelay);
  field.relaysMoving = true;
  for (const servo of field.servos) {
    const movesDamper = servo.parameters.moves !== 'fuel valve';
    prepareServo(
      servo,
      movesDamper ? points.purgeDamperDeg : points.purgeFuelValveDeg,
      movesDamper ? points.lightOffDamperDeg : points.lightOffFuelValveDeg,
    );
  }
  for (const drive of field.drives) {
    prepareDrive(drive, points.purgeFanRpm, points.lightOffFanRpm, stepS);
  }
  for (const transmitter of field.transmitters) {
    prepareTransmitter(
      transmitter,
      isSlowTransmitter(transmitter.parameters) ? SLOW_STEP_S : stepS,
    );
  }
  const shiftPa = field.onSecondSetpoint ? firingRate.secondSetpointPa - firingRate.setpointPa : 0;
  for (const s of field.airSwitches) preparePressureSwitch(s, shiftPa, stepS);
  for (const s of field.slowSwitches) preparePressureSwitch(s, shiftPa, SLOW_STEP_S);
  field.interspaceComparators.forEach(prepareInterspaceComparator);
  field.closedProofs.forEach(prepareClosedProof);
  field.waterCutOffs.forEach(prepareWaterCutOff);
  field.ignitionTransformers.forEach(prepareIgnitionTransformer);
  for (const sensor of field.flameSensors) prepareFlameSensor(sensor, stepS);
  field.flameRelays.forEach(prepareFlameRelay);
  field.airChangeCounters.forEach(prepareAirChangeCounter);
  prepareCurve(field.curve);
  field.targetStale = true;
}
