import type { AirChangeCounter } from './air-change-counter.ts';
import type { ClosedProof } from './closed-proof.ts';
import type { Contact } from './contact.ts';
import type { Curve, Positions } from './curve.ts';
import type { CurveSupervision } from './curve-supervision.ts';
import type { Drive } from './drive.ts';
import type { FiringRate } from './firing-rate.ts';
import type { FlameRelay } from './flame-relay.ts';
import type { FlameSensor } from './flame-sensor.ts';
import type { IgnitionTransformer } from './ignition-transformer.ts';
import type { InterspaceComparator } from './interspace-comparator.ts';
import type { FieldOutputs } from './outputs.ts';
import type { Panel } from './panel.ts';
import type { PressureSwitch } from './pressure-switch.ts';
import type { Relay } from './relay.ts';
import type { FieldParameters } from './sections.ts';
import type { Servo } from './servo.ts';
import type { Supply } from './supply.ts';
import type { TerminalStrings } from './terminal-strings.ts';
import type { Transmitter } from './transmitter.ts';
import type { WaterCutOff } from './water-cut-off.ts';

/** The field of one plant: every device's state, and how they hang together. */
export interface Field {
  readonly parameters: FieldParameters;
  readonly panel: Panel;
  readonly outputs: FieldOutputs;
  readonly supply: Supply;
  /** The safety relay first, because the others hang on its contact. */
  readonly relays: readonly Relay[];
  readonly relayBits: readonly number[];
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
  readonly waterCutOffs: readonly WaterCutOff[];
  readonly ignitionTransformers: readonly IgnitionTransformer[];
  readonly flameSensors: readonly FlameSensor[];
  readonly flameRelays: readonly FlameRelay[];
  /** The sensor of each flame relay, in the order of `flameRelays`. */
  readonly listenedTo: readonly FlameSensor[];
  readonly airChangeCounters: readonly AirChangeCounter[];
  readonly curve: Curve;
  readonly firingRate: FiringRate;
  readonly curveSupervision: CurveSupervision;

  readonly safetyRelay: Relay | null;
  readonly safetyContact: Contact;
  readonly fanRelay: Relay | null;
  readonly sparkRelay: Relay | null;
  readonly pilotRelay: Relay | null;
  readonly upstreamRelay: Relay | null;
  readonly downstreamRelay: Relay | null;
  readonly ventRelay: Relay | null;
  readonly alarmRelay: Relay | null;
  readonly damper: Servo | null;
  readonly fuelValve: Servo | null;
  readonly drive: Drive | null;
  readonly vesselTransmitter: Transmitter | null;
  readonly interspaceTransmitter: Transmitter | null;
  readonly supplyGasTransmitter: Transmitter | null;

  readonly strings: TerminalStrings;
  readonly panelHeat: Contact;
  readonly panelReset: Contact;
  readonly panelEmergency: Contact;
  readonly target: Positions;

  targetIndex: number;
  /** Points or curve have changed: resolve the target again. */
  targetStale: boolean;
  countingAir: boolean;
  onSecondSetpoint: boolean;
  /** The step the derived constants are for. */
  stepS: number;
  slowDriveS: number;
  slowReadS: number;
  relaysFedVolts: number;
  relaysCommanded: number;
  relaysMoving: boolean;
}

/** What is slow against it (vessel, water, gas limits, noise, firing rate, displays) runs so often. */
export const SLOW_STEP_S = 0.1;
