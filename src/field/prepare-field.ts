import { prepareAirChangeCounter } from './air-change-counter.ts';
import { prepareClosedProof } from './closed-proof.ts';
import { prepareCurve } from './curve.ts';
import { prepareDrive } from './drive.ts';
import { prepareFeedControl } from './feed-control.ts';
import { type Field, SLOW_STEP_S } from './field.ts';
import { prepareFiringRate, setpointShift } from './firing-rate.ts';
import { prepareFlameRelay } from './flame-relay.ts';
import { prepareFlameSensor } from './flame-sensor.ts';
import { prepareIgnitionTransformer } from './ignition-transformer.ts';
import { prepareInterspaceComparator } from './interspace-comparator.ts';
import { prepareLevelProbe } from './level-probe.ts';
import { isSlowTransmitter } from './pace.ts';
import { preparePressureSwitch } from './pressure-switch.ts';
import { prepareRelay } from './relay.ts';
import { prepareServo } from './servo.ts';
import { prepareSupply } from './supply.ts';
import { prepareTemperatureSwitch } from './temperature-switch.ts';
import { prepareThermometer } from './thermometer.ts';
import { prepareTransmitter } from './transmitter.ts';
import { prepareWaterCutOff } from './water-cut-off.ts';
import { prepareWiring } from './wiring/index.ts';

/** After any change of a parameter or of the step: derived constants anew, state untouched. */
export function prepareField(field: Field): void {
  const { stepS } = field;
  const { points } = field.parameters.control;
  prepareSupply(field.supply);
  field.relays.forEach(prepareRelay);
  prepareWiring(field.wiring);
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
  const { firingRate } = field;
  prepareFiringRate(firingRate);
  const shift = setpointShift(firingRate, field.onSecondSetpoint);
  const shiftPa = firingRate.onTemperature ? 0 : shift;
  const shiftK = firingRate.onTemperature ? shift : 0;
  for (const s of field.airSwitches) preparePressureSwitch(s, shiftPa, stepS);
  for (const s of field.slowSwitches) preparePressureSwitch(s, shiftPa, SLOW_STEP_S);
  for (const s of field.temperatureSwitches) prepareTemperatureSwitch(s, shiftK, SLOW_STEP_S);
  for (const thermometer of field.thermometers) prepareThermometer(thermometer, SLOW_STEP_S);
  for (const probe of field.levelProbes) prepareLevelProbe(probe, SLOW_STEP_S);
  field.feedControls.forEach(prepareFeedControl);
  field.interspaceComparators.forEach(prepareInterspaceComparator);
  field.closedProofs.forEach(prepareClosedProof);
  field.waterCutOffs.forEach(prepareWaterCutOff);
  field.ignitionTransformers.forEach(prepareIgnitionTransformer);
  for (const sensor of field.flameSensors) prepareFlameSensor(sensor, stepS);
  field.flameRelays.forEach(prepareFlameRelay);
  field.airChangeCounters.forEach(prepareAirChangeCounter);
  prepareCurve(field.curve);
  field.targetStale = true;
  field.aimsRest = false;
  field.positionsRest = false;
}
