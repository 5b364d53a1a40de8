import type { AirChangeCounter } from './air-change-counter.ts';
import type { ClosedProof } from './closed-proof.ts';
import type { Contact } from './contact.ts';
import type { ControllerLogic } from './controller-logic.ts';
import type { Curve, Positions } from './curve.ts';
import type { CurveSupervision } from './curve-supervision.ts';
import type { Drive } from './drive.ts';
import type { FeedControl } from './feed-control.ts';
import type { FieldParameters } from './field-parameters.ts';
import type { FiringRate } from './firing-rate.ts';
import type { FlameRelay } from './flame-relay.ts';
import type { FlameSensor } from './flame-sensor.ts';
import type { IgnitionTransformer } from './ignition-transformer.ts';
import type { InterspaceComparator } from './interspace-comparator.ts';
import type { LevelProbe } from './level-probe.ts';
import type { FieldOutputs } from './outputs.ts';
import type { Panel } from './panel.ts';
import type { PressureSwitch } from './pressure-switch.ts';
import type { Relay } from './relay.ts';
import type { Servo } from './servo.ts';
import type { Supply } from './supply.ts';
import type { TemperatureSwitch } from './temperature-switch.ts';
import type { Thermometer } from './thermometer.ts';
import type { RemoteContact, TimeClock } from './time-clock.ts';
import type { Transmitter } from './transmitter.ts';
import type { WaterCutOff } from './water-cut-off.ts';
import type { WiredPlaces } from './wired-places.ts';
import type { Wiring } from './wiring/index.ts';

/** The field of one plant: every device's state, and how they hang together. */
export interface Field {
  readonly parameters: FieldParameters;
  readonly panel: Panel;
  readonly outputs: FieldOutputs;
  readonly supply: Supply;
  readonly relays: readonly Relay[];
  readonly servos: readonly Servo[];
  readonly drives: readonly Drive[];
  readonly transmitters: readonly Transmitter[];
  /** On the interspace: stepped always, the others ten times a second. */
  readonly fastTransmitters: readonly Transmitter[];
  readonly slowTransmitters: readonly Transmitter[];
  /** The airflow switches are stepped always, the others ten times a second. */
  readonly airSwitches: readonly PressureSwitch[];
  readonly slowSwitches: readonly PressureSwitch[];
  readonly interspaceComparators: readonly InterspaceComparator[];
  readonly closedProofs: readonly ClosedProof[];
  readonly temperatureSwitches: readonly TemperatureSwitch[];
  readonly thermometers: readonly Thermometer[];
  readonly levelProbes: readonly LevelProbe[];
  readonly waterCutOffs: readonly WaterCutOff[];
  readonly feedControls: readonly FeedControl[];
  readonly timeClocks: readonly TimeClock[];
  readonly remoteContacts: readonly RemoteContact[];
  readonly ignitionTransformers: readonly IgnitionTransformer[];
  readonly flameSensors: readonly FlameSensor[];
  readonly flameRelays: readonly FlameRelay[];
  /** The sensor of each flame relay, in the order of `flameRelays`. */
  readonly listenedTo: readonly FlameSensor[];
  readonly airChangeCounters: readonly AirChangeCounter[];
  readonly curve: Curve;
  readonly firingRate: FiringRate;
  readonly curveSupervision: CurveSupervision;

  readonly wiring: Wiring;
  readonly places: WiredPlaces;
  /** Commands whose output is made without them. */
  readonly invertedOutputs: number;
  readonly logic: ControllerLogic;
  readonly damper: Servo | null;
  readonly fuelValve: Servo | null;
  readonly drive: Drive | null;
  readonly vesselTransmitter: Transmitter | null;
  /** In the water that leaves the boiler. */
  readonly vesselThermometer: Thermometer | null;
  readonly interspaceTransmitter: Transmitter | null;
  readonly supplyGasTransmitter: Transmitter | null;

  readonly isolator: Contact;
  readonly panelHeat: Contact;
  readonly panelReset: Contact;
  readonly panelEmergency: Contact;
  readonly panelSetback: Contact;
  readonly target: Positions;

  targetIndex: number;
  /** Points or curve have changed: resolve the target again. */
  targetStale: boolean;
  countingAir: boolean;
  onSecondSetpoint: boolean;
  /** What terminals and logic said while there were volts to read by. */
  heldTerminals: number;
  heldDecisions: number;
  /** A clock or a contact asks for the second setpoint. */
  setback: boolean;
  /** Seconds since midnight of the simulated day. */
  dayS: number;
  /** The step the derived constants are for. */
  stepS: number;
  slowDriveS: number;
  slowReadS: number;
  /** The controller's electronics have volts. */
  powered: boolean;
  commanded: number;
  relaysMoving: boolean;
  /** Servos and drive have what they were asked for: asked anew only after a change. */
  aimsRest: boolean;
  /** Positions and speeds are proved or not, for good while these three stay what they were. */
  positionsRest: boolean;
  restUpstreamStem: number;
  restDownstreamStem: number;
  restFanRpm: number;
}

/** What is slow against it (vessel, water, gas limits, noise, firing rate, displays) runs so often. */
export const SLOW_STEP_S = 0.1;
