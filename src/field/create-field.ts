import { createRandom } from '../numeric/index.ts';
import { createAirChangeCounter } from './air-change-counter.ts';
import { createClosedProof } from './closed-proof.ts';
import { connectTerminals } from './connect-terminals.ts';
import { createContact } from './contact.ts';
import { createCurve } from './curve.ts';
import { createCurveSupervision } from './curve-supervision.ts';
import { createDrive } from './drive.ts';
import { type Field, SLOW_STEP_S } from './field.ts';
import { createFiringRate } from './firing-rate.ts';
import { createFlameRelay, type FlameRelay } from './flame-relay.ts';
import { createFlameSensor, type FlameSensor } from './flame-sensor.ts';
import { createIgnitionTransformer } from './ignition-transformer.ts';
import { createInterspaceComparator } from './interspace-comparator.ts';
import { createOutputs } from './outputs.ts';
import { isSlowSwitch, isSlowTransmitter } from './pace.ts';
import { createPanel } from './panel.ts';
import { createPressureSwitch } from './pressure-switch.ts';
import { createRelay, type Relay } from './relay.ts';
import type { FieldParameters } from './sections.ts';
import { createServo } from './servo.ts';
import { createSupply } from './supply.ts';
import { createTerminalStrings } from './terminal-strings.ts';
import { COMMAND_BITS } from './terminals.ts';
import { createTransmitter } from './transmitter.ts';
import { createWaterCutOff } from './water-cut-off.ts';

const USUAL_STEP_S = 0.01;

/**
 * @param parameters the `field` and `control` sections of a plant; kept, not copied: a fault
 *   changes them in place and then calls `prepareField`
 * @throws RangeError when `findFieldIssues` would have named a relay without its sensor
 */
export function createField(parameters: FieldParameters, randomSeed: number): Field {
  const { field: devices, control } = parameters;
  const { points } = control;
  const seeded = (id: string) => createRandom(randomSeed, `field.${id}`);

  const strings = createTerminalStrings();
  const { board } = strings;
  const relays = devices.relays
    .map((p) => createRelay(p, board))
    .sort((a, b) => safetyRank(a) - safetyRank(b));
  const onTerminal = (terminal: string) =>
    relays.find((relay) => relay.parameters.terminal === terminal) ?? null;
  const servos = devices.servos.map((p) => {
    const movesDamper = p.moves !== 'fuel valve';
    return createServo(
      p,
      movesDamper ? points.purgeDamperDeg : points.purgeFuelValveDeg,
      movesDamper ? points.lightOffDamperDeg : points.lightOffFuelValveDeg,
      seeded(`servo.${p.id}`),
      board,
    );
  });
  const drives = devices.drives.map((p) =>
    createDrive(p, points.purgeFanRpm, points.lightOffFanRpm, USUAL_STEP_S, board),
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
  const flameSensors = devices.flameSensors.map((p) =>
    createFlameSensor(p, seeded(`sensor.${p.id}`), USUAL_STEP_S),
  );
  const flameRelays = devices.flameRelays.map((p) => createFlameRelay(p, board));
  const curve = createCurve(control.curve);
  const sensing = (signal: string) =>
    transmitters.find((transmitter) => transmitter.parameters.senses === signal) ?? null;
  const safety = onTerminal('safetyRelay');

  const field: Field = {
    parameters,
    panel: createPanel(),
    outputs: createOutputs(),
    supply: createSupply(devices.supply, board),
    relays,
    relayBits: relays.map((relay) => COMMAND_BITS[relay.parameters.terminal]),
    servos,
    drives,
    transmitters,
    fastTransmitters: transmitters.filter((t) => !isSlowTransmitter(t.parameters)),
    slowTransmitters: transmitters.filter((t) => isSlowTransmitter(t.parameters)),
    airSwitches: switches.filter((s) => !isSlowSwitch(s.parameters)),
    slowSwitches: switches.filter((s) => isSlowSwitch(s.parameters)),
    interspaceComparators: devices.interspaceComparators.map((p) =>
      createInterspaceComparator(p, board),
    ),
    closedProofs: devices.closedProofs.map((p) => createClosedProof(p, board)),
    waterCutOffs: devices.waterCutOffs.map((p) => createWaterCutOff(p, board)),
    ignitionTransformers: devices.ignitionTransformers.map(createIgnitionTransformer),
    flameSensors,
    flameRelays,
    listenedTo: flameRelays.map((relay) => sensorOf(relay, flameSensors)),
    airChangeCounters: devices.airChangeCounters.map((p) => createAirChangeCounter(p, board)),
    curve,
    firingRate: createFiringRate(control.firingRate, curve.lowFireRate),
    curveSupervision: createCurveSupervision(control.curveSupervision, board),
    safetyRelay: safety,
    safetyContact: safety === null ? createContact(board, true) : safety.contact,
    fanRelay: onTerminal('fan'),
    sparkRelay: onTerminal('spark'),
    pilotRelay: onTerminal('pilotValve'),
    upstreamRelay: onTerminal('upstreamValve'),
    downstreamRelay: onTerminal('downstreamValve'),
    ventRelay: onTerminal('ventValve'),
    alarmRelay: onTerminal('alarm'),
    damper: servos.find((servo) => servo.parameters.moves !== 'fuel valve') ?? null,
    fuelValve: servos.find((servo) => servo.parameters.moves !== 'damper') ?? null,
    drive: drives[0] ?? null,
    vesselTransmitter: sensing('vessel'),
    interspaceTransmitter: sensing('interspace'),
    supplyGasTransmitter: sensing('regulated gas'),
    strings,
    panelHeat: createContact(board, false),
    panelReset: createContact(board, false),
    panelEmergency: createContact(board, true),
    target: { damperDeg: 0, fanRpm: 0, fuelValveDeg: 0 },
    targetIndex: 0,
    targetStale: true,
    countingAir: false,
    onSecondSetpoint: false,
    stepS: USUAL_STEP_S,
    slowDriveS: 0,
    slowReadS: 0,
    relaysFedVolts: 0,
    relaysCommanded: 0,
    relaysMoving: true,
  };
  connectTerminals(field);
  return field;
}

function safetyRank(relay: Relay): number {
  return relay.parameters.terminal === 'safetyRelay' ? 0 : 1;
}

function sensorOf(relay: FlameRelay, sensors: readonly FlameSensor[]): FlameSensor {
  const sensor = sensors.find(({ parameters }) => parameters.id === relay.parameters.sensor);
  if (sensor === undefined) {
    throw new RangeError(`no flame sensor named ${relay.parameters.sensor}`);
  }
  return sensor;
}
