import { createRandom } from '../numeric/index.ts';
import { createAirChangeCounter } from './air-change-counter.ts';
import type { AnalogueInput } from './analogue-input.ts';
import { createClosedProof } from './closed-proof.ts';
import { connectLogic } from './connect-logic.ts';
import { type Contact, createContact, createContactBoard } from './contact.ts';
import { createControllerLogic } from './controller-logic.ts';
import { createCurve } from './curve.ts';
import { createCurveSupervision } from './curve-supervision.ts';
import { createDrive } from './drive.ts';
import { createFeedControl } from './feed-control.ts';
import { type Field, SLOW_STEP_S } from './field.ts';
import { createFiringRate } from './firing-rate.ts';
import { createFlameRelay, type FlameRelay } from './flame-relay.ts';
import { createFlameSensor, type FlameSensor } from './flame-sensor.ts';
import { createIgnitionTransformer } from './ignition-transformer.ts';
import { createInterspaceComparator } from './interspace-comparator.ts';
import { createLevelProbe } from './level-probe.ts';
import { createOutputs } from './outputs.ts';
import { isSlowSwitch, isSlowTransmitter } from './pace.ts';
import { createPanel } from './panel.ts';
import { createPressureSwitch } from './pressure-switch.ts';
import { createRelay } from './relay.ts';
import type { FieldParameters } from './sections.ts';
import { createServo } from './servo.ts';
import { createSupply } from './supply.ts';
import { findPlaces } from './take-wiring.ts';
import { createTemperatureSwitch } from './temperature-switch.ts';
import { COMMAND_BITS } from './terminals.ts';
import { createThermometer } from './thermometer.ts';
import { createRemoteContact, createTimeClock } from './time-clock.ts';
import { createTransmitter } from './transmitter.ts';
import { createWaterCutOff } from './water-cut-off.ts';
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

  const unwired: Omit<Field, 'wiring' | 'places'> = {
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
    airSwitches: switches.filter((s) => !isSlowSwitch(s.parameters)),
    slowSwitches: switches.filter((s) => isSlowSwitch(s.parameters)),
    interspaceComparators: devices.interspaceComparators.map((p) =>
      createInterspaceComparator(p, own),
    ),
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
    ignitionTransformers: devices.ignitionTransformers.map(createIgnitionTransformer),
    flameSensors,
    flameRelays,
    listenedTo: flameRelays.map((relay) => sensorOf(relay, flameSensors)),
    airChangeCounters: devices.airChangeCounters.map((p) => createAirChangeCounter(p, own)),
    curve,
    firingRate: createFiringRate(control.firingRate, curve.lowFireRate),
    curveSupervision: createCurveSupervision(control.curveSupervision, own),
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
    isolator: createContact(board, true),
    panelHeat: createContact(board, false),
    panelReset: createContact(board, false),
    panelEmergency: createContact(board, true),
    panelSetback: createContact(board, false),
    target: { damperDeg: 0, fanRpm: 0, fuelValveDeg: 0 },
    targetIndex: 0,
    targetStale: true,
    countingAir: false,
    onSecondSetpoint: false,
    setback: false,
    dayS: hour * HOUR_S,
    stepS: USUAL_STEP_S,
    slowDriveS: SLOW_STEP_S,
    slowReadS: 0,
    powered: false,
    commanded: -1,
    relaysMoving: true,
  };
  const wiring = createWiring(
    parameters,
    contactsOf(unwired),
    inputsOf(unwired),
    signalsOf(unwired),
    board,
  );
  const field: Field = { ...unwired, wiring, places: findPlaces(wiring) };
  field.servos.forEach((servo, i) => {
    servo.endWired = (field.places.servoEnds[i] as number) >= 0;
  });
  connectLogic(field);
  return field;
}

/** Every contact that stands in the wiring, by the name of its element. */
function contactsOf(field: Omit<Field, 'wiring' | 'places'>): Map<string, Contact> {
  const contacts = new Map<string, Contact>([
    ['isolator', field.isolator],
    ['burner-switch', field.panelHeat],
    ['reset-button', field.panelReset],
    ['emergency-stop', field.panelEmergency],
    ['second-setpoint', field.panelSetback],
  ]);
  const switches = [
    ...field.airSwitches,
    ...field.slowSwitches,
    ...field.temperatureSwitches,
    ...field.waterCutOffs,
    ...field.closedProofs,
  ];
  for (const { parameters, snap } of switches) contacts.set(parameters.id, snap.contact);
  for (const { parameters, contact } of [...field.timeClocks, ...field.remoteContacts]) {
    contacts.set(parameters.id, contact);
  }
  for (const { parameters, pump } of field.feedControls) {
    contacts.set(`${parameters.id}.pump`, pump.contact);
  }
  for (const { parameters, contact, feedback } of field.relays) {
    contacts.set(`${parameters.id}.contact`, contact);
    contacts.set(`${parameters.id}.feedback`, feedback);
  }
  for (const { parameters, endSwitch } of field.servos) {
    contacts.set(`${parameters.id}.end-switch`, endSwitch);
  }
  return contacts;
}

/** What each sender puts on its wires at a moment; only a meter asks. */
function signalsOf(field: Omit<Field, 'wiring' | 'places'>): Map<string, () => number> {
  const signals = new Map<string, () => number>();
  for (const t of field.transmitters) {
    const sent = () => Math.max(t.lowPa, Math.min(t.highPa, t.sensedPa + t.errorPa));
    signals.set(`${t.parameters.id}.loop`, sent);
  }
  for (const t of field.thermometers) signals.set(`${t.parameters.id}.loop`, () => t.sensedC);
  for (const p of field.levelProbes) signals.set(`${p.parameters.id}.loop`, () => p.sensedM);
  for (const s of field.servos) {
    signals.set(`${s.parameters.id}.wiper`, () => s.motorDeg + s.offsetDeg + s.noiseDeg);
  }
  for (const d of field.drives) {
    signals.set(`ao.${d.parameters.id}`, () => field.target.fanRpm);
    signals.set(`${d.parameters.id}.feedback`, () => d.sensedRpm);
  }
  for (const c of field.feedControls) signals.set(`ao.${c.parameters.id}`, () => c.demand);
  for (const s of field.flameSensors) {
    signals.set(`${s.parameters.id}.signal`, () => s.smoothMicroamps + s.noiseMicroamps);
  }
  return signals;
}

/** Everything that reads a signal over wires, by the name of the element that measures it. */
function inputsOf(field: Omit<Field, 'wiring' | 'places'>): Map<string, AnalogueInput> {
  const inputs = new Map<string, AnalogueInput>();
  const readers = [
    ...field.transmitters,
    ...field.thermometers,
    ...field.levelProbes,
    ...field.airChangeCounters,
    ...field.servos,
    ...field.flameSensors,
  ];
  for (const { parameters, input } of readers) inputs.set(`ai.${parameters.id}`, input);
  for (const { parameters, valveInput } of field.feedControls) {
    inputs.set(`${parameters.id}.valve`, valveInput);
  }
  for (const { parameters, referenceInput, feedbackInput } of field.drives) {
    inputs.set(`${parameters.id}.reference`, referenceInput);
    inputs.set(`ai.${parameters.id}`, feedbackInput);
  }
  return inputs;
}

function sensorOf(relay: FlameRelay, sensors: readonly FlameSensor[]): FlameSensor {
  const sensor = sensors.find(({ parameters }) => parameters.id === relay.parameters.sensor);
  if (sensor === undefined) {
    throw new RangeError(`no flame sensor named ${relay.parameters.sensor}`);
  }
  return sensor;
}
