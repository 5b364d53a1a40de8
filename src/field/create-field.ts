import { createRandom } from '../numeric/index.ts';
import { createAirChangeCounter } from './air-change-counter.ts';
import { createClosedProof } from './closed-proof.ts';
import { connectLogic } from './connect-logic.ts';
import { createContact, createContactBoard } from './contact.ts';
import { createControllerLogic } from './controller-logic.ts';
import { createCurve } from './curve.ts';
import { createCurveSupervision } from './curve-supervision.ts';
import { contactsOf, type DevicesInWires, inputsOf, signalsOf } from './devices-in-wires.ts';
import { createDrive } from './drive.ts';
import { createFeedControl } from './feed-control.ts';
import { type Field, SLOW_STEP_S } from './field.ts';
import type { FieldParameters } from './field-parameters.ts';
import { createFiringRate } from './firing-rate.ts';
import { createFlameRelay, type FlameRelay } from './flame-relay.ts';
import { createFlameSensor, type FlameSensor } from './flame-sensor.ts';
import { NOTHING_READ } from './hold-terminals.ts';
import { createIgnitionTransformer } from './ignition-transformer.ts';
import { createInterspaceComparator } from './interspace-comparator.ts';
import { createLevelProbe } from './level-probe.ts';
import { createOutputs } from './outputs.ts';
import { isSlowSwitch, isSlowTransmitter } from './pace.ts';
import { createPanel } from './panel.ts';
import { createPressureSwitch } from './pressure-switch.ts';
import { createRelay } from './relay.ts';
import { createServo } from './servo.ts';
import { createSupply } from './supply.ts';
import { createTemperatureSwitch } from './temperature-switch.ts';
import { COMMAND_BITS } from './terminals.ts';
import { createThermometer } from './thermometer.ts';
import { createRemoteContact, createTimeClock } from './time-clock.ts';
import { createTransmitter } from './transmitter.ts';
import { createWaterCutOff } from './water-cut-off.ts';
import { findPlaces } from './wired-places.ts';
import { createWiring } from './wiring/index.ts';

const USUAL_STEP_S = 0.01;
const MORNING_HOUR = 8;
const HOUR_S = 3600;

/**
 * @param parameters the `field` and `control` sections of a plant; kept, not copied: a fault
 *   changes them in place and then calls `prepareField`
 * @param hour time of day at which a run begins, 0 to 24
 * @throws RangeError when `findFieldIssues` would have named a relay without its sensor
 */
export function createField(
  parameters: FieldParameters,
  randomSeed: number,
  hour: number = MORNING_HOUR,
): Field {
  const { field: devices, control } = parameters;
  const { points } = control;
  const seeded = (id: string) => createRandom(randomSeed, `field.${id}`);

  const board = createContactBoard();
  const logic = createControllerLogic();
  const own = logic.board;
  const relays = devices.relays.map((p) => createRelay(p, board));
  const servos = devices.servos.map((p) => {
    const movesDamper = p.moves !== 'fuel valve';
    return createServo(
      p,
      movesDamper ? points.purgeDamperDeg : points.purgeFuelValveDeg,
      movesDamper ? points.lightOffDamperDeg : points.lightOffFuelValveDeg,
      seeded(`servo.${p.id}`),
      board,
      own,
    );
  });
  const drives = devices.drives.map((p) =>
    createDrive(p, points.purgeFanRpm, points.lightOffFanRpm, USUAL_STEP_S, own),
  );
  const transmitters = devices.transmitters.map((p) =>
    createTransmitter(
      p,
      seeded(`transmitter.${p.id}`),
      isSlowTransmitter(p) ? SLOW_STEP_S : USUAL_STEP_S,
    ),
  );
  const switches = devices.switches.map((p) =>
    createPressureSwitch(p, isSlowSwitch(p) ? SLOW_STEP_S : USUAL_STEP_S, board),
  );
  const thermometers = devices.thermometers.map((p) =>
    createThermometer(p, seeded(`thermometer.${p.id}`), SLOW_STEP_S),
  );
  const levelProbes = devices.levelProbes.map((p) =>
    createLevelProbe(p, seeded(`probe.${p.id}`), SLOW_STEP_S),
  );
  const flameSensors = devices.flameSensors.map((p) =>
    createFlameSensor(p, seeded(`sensor.${p.id}`), USUAL_STEP_S),
  );
  const flameRelays = devices.flameRelays.map((p) => createFlameRelay(p, own));
  const curve = createCurve(control.curve);
  const sensing = (signal: string) =>
    transmitters.find((transmitter) => transmitter.parameters.senses === signal) ?? null;

  const devicesInWires: DevicesInWires = {
    relays,
    servos,
    drives,
    transmitters,
    airSwitches: switches.filter((s) => !isSlowSwitch(s.parameters)),
    slowSwitches: switches.filter((s) => isSlowSwitch(s.parameters)),
    closedProofs: devices.closedProofs.map((p) => createClosedProof(p, board)),
    temperatureSwitches: devices.temperatureSwitches.map((p) =>
      createTemperatureSwitch(p, SLOW_STEP_S, board),
    ),
    thermometers,
    levelProbes,
    waterCutOffs: devices.waterCutOffs.map((p) => createWaterCutOff(p, board)),
    feedControls: devices.feedControls.map((p) => createFeedControl(p, levelProbes, board)),
    timeClocks: devices.timeClocks.map((p) => createTimeClock(p, board)),
    remoteContacts: devices.remoteContacts.map((p) => createRemoteContact(p, board)),
    flameSensors,
    airChangeCounters: devices.airChangeCounters.map((p) => createAirChangeCounter(p, own)),
    isolator: createContact(board, true),
    panelHeat: createContact(board, false),
    panelReset: createContact(board, false),
    panelEmergency: createContact(board, true),
    panelSetback: createContact(board, false),
    target: { damperDeg: 0, fanRpm: 0, fuelValveDeg: 0 },
  };
  const wiring = createWiring(
    parameters,
    contactsOf(devicesInWires),
    inputsOf(devicesInWires),
    signalsOf(devicesInWires),
    board,
  );
  // One literal, without a spread: a copied object of this size gets a shape of its own in V8, and
  // code compiled for the field of one run is then wrong for that of the next.
  const field: Field = {
    parameters,
    panel: createPanel(),
    outputs: createOutputs(),
    supply: createSupply(devices.supply, own),
    relays,
    servos,
    drives,
    transmitters,
    fastTransmitters: transmitters.filter((t) => !isSlowTransmitter(t.parameters)),
    slowTransmitters: transmitters.filter((t) => isSlowTransmitter(t.parameters)),
    airSwitches: devicesInWires.airSwitches,
    slowSwitches: devicesInWires.slowSwitches,
    interspaceComparators: devices.interspaceComparators.map((p) =>
      createInterspaceComparator(p, own),
    ),
    closedProofs: devicesInWires.closedProofs,
    temperatureSwitches: devicesInWires.temperatureSwitches,
    thermometers,
    levelProbes,
    waterCutOffs: devicesInWires.waterCutOffs,
    feedControls: devicesInWires.feedControls,
    timeClocks: devicesInWires.timeClocks,
    remoteContacts: devicesInWires.remoteContacts,
    ignitionTransformers: devices.ignitionTransformers.map(createIgnitionTransformer),
    flameSensors,
    flameRelays,
    listenedTo: flameRelays.map((relay) => sensorOf(relay, flameSensors)),
    airChangeCounters: devicesInWires.airChangeCounters,
    curve,
    firingRate: createFiringRate(control.firingRate, curve.lowFireRate),
    curveSupervision: createCurveSupervision(control.curveSupervision, own),
    wiring,
    places: findPlaces(wiring),
    logic,
    invertedOutputs: devices.relays.reduce(
      (word, { terminal, energises }) =>
        energises === 'without command' ? word | COMMAND_BITS[terminal] : word,
      0,
    ),
    damper: servos.find((servo) => servo.parameters.moves !== 'fuel valve') ?? null,
    fuelValve: servos.find((servo) => servo.parameters.moves !== 'damper') ?? null,
    drive: drives[0] ?? null,
    vesselTransmitter: sensing('vessel'),
    vesselThermometer:
      thermometers.find(({ parameters: p }) => p.senses === 'vessel temperature') ?? null,
    interspaceTransmitter: sensing('interspace'),
    supplyGasTransmitter: sensing('regulated gas'),
    isolator: devicesInWires.isolator,
    panelHeat: devicesInWires.panelHeat,
    panelReset: devicesInWires.panelReset,
    panelEmergency: devicesInWires.panelEmergency,
    panelSetback: devicesInWires.panelSetback,
    target: devicesInWires.target,
    targetIndex: 0,
    targetStale: true,
    countingAir: false,
    onSecondSetpoint: false,
    heldTerminals: NOTHING_READ,
    heldDecisions: 0,
    setback: false,
    dayS: hour * HOUR_S,
    stepS: USUAL_STEP_S,
    slowDriveS: SLOW_STEP_S,
    slowReadS: 0,
    powered: false,
    commanded: -1,
    relaysMoving: true,
    aimsRest: false,
    positionsRest: false,
    restUpstreamStem: Number.NaN,
    restDownstreamStem: Number.NaN,
    restFanRpm: Number.NaN,
  };
  field.servos.forEach((servo, i) => {
    servo.endWired = (field.places.servoEnds[i] as number) >= 0;
  });
  connectLogic(field);
  return field;
}

function sensorOf(relay: FlameRelay, sensors: readonly FlameSensor[]): FlameSensor {
  const sensor = sensors.find(({ parameters }) => parameters.id === relay.parameters.sensor);
  if (sensor === undefined) {
    throw new RangeError(`no flame sensor named ${relay.parameters.sensor}`);
  }
  return sensor;
}
