import type { ParameterTable } from '../quantity/index.ts';
import {
  type AirChangeCounterParameters,
  airChangeCounterParameters,
} from './air-change-counter.ts';
import { type ClosedProofParameters, closedProofParameters } from './closed-proof.ts';
import { type CurveParameters, curveParameters } from './curve.ts';
import {
  type CurveSupervisionParameters,
  curveSupervisionParameters,
} from './curve-supervision.ts';
import {
  type DriveParameters,
  fixedSpeedParameters,
  variableSpeedParameters,
} from './drive-parameters.ts';
import {
  type FeedControlParameters,
  modulatingFeedParameters,
  onOffFeedParameters,
} from './feed-control.ts';
import {
  type FiringRateParameters,
  pressureFiringRateParameters,
  temperatureFiringRateParameters,
} from './firing-rate.ts';
import { type FlameRelayParameters, flameRelayParameters } from './flame-relay.ts';
import type { FlameSensorParameters } from './flame-sensor.ts';
import {
  type IgnitionTransformerParameters,
  ignitionTransformerParameters,
} from './ignition-transformer.ts';
import {
  type InterspaceComparatorParameters,
  interspaceComparatorParameters,
} from './interspace-comparator.ts';
import { ionisationSensorParameters } from './ionisation-sensor.ts';
import { irSensorParameters } from './ir-sensor.ts';
import { type LevelProbeParameters, levelProbeParameters } from './level-probe.ts';
import { type PressureSwitchParameters, pressureSwitchParameters } from './pressure-switch.ts';
import { type RelayParameters, relayParameters } from './relay.ts';
import { type ServoParameters, servoParameters } from './servo.ts';
import { type SupplyParameters, supplyParameters } from './supply.ts';
import { type PointsParameters, pointsParameters } from './targets.ts';
import {
  type TemperatureSwitchParameters,
  temperatureSwitchParameters,
} from './temperature-switch.ts';
import { type ThermometerParameters, thermometerParameters } from './thermometer.ts';
import {
  type RemoteContactParameters,
  remoteContactParameters,
  type TimeClockParameters,
  timeClockParameters,
} from './time-clock.ts';
import { type TransmitterParameters, transmitterParameters } from './transmitter.ts';
import { uvSensorParameters } from './uv-sensor.ts';
import { type WaterCutOffParameters, waterCutOffParameters } from './water-cut-off.ts';

/**
 * One section of a plant file: its tables, and whether it is one thing or a list of them. Where a
 * section has several tables, `kind` says which one an entry follows.
 */
export interface Section {
  readonly list: boolean;
  readonly tables: readonly ParameterTable[];
}

export const FIELD_SECTIONS = {
  supply: { list: false, tables: [supplyParameters] },
  relays: { list: true, tables: [relayParameters] },
  servos: { list: true, tables: [servoParameters] },
  drives: { list: true, tables: [variableSpeedParameters, fixedSpeedParameters] },
  transmitters: { list: true, tables: [transmitterParameters] },
  thermometers: { list: true, tables: [thermometerParameters] },
  switches: { list: true, tables: [pressureSwitchParameters] },
  temperatureSwitches: { list: true, tables: [temperatureSwitchParameters] },
  interspaceComparators: { list: true, tables: [interspaceComparatorParameters] },
  closedProofs: { list: true, tables: [closedProofParameters] },
  levelProbes: { list: true, tables: [levelProbeParameters] },
  waterCutOffs: { list: true, tables: [waterCutOffParameters] },
  feedControls: { list: true, tables: [modulatingFeedParameters, onOffFeedParameters] },
  timeClocks: { list: true, tables: [timeClockParameters] },
  remoteContacts: { list: true, tables: [remoteContactParameters] },
  ignitionTransformers: { list: true, tables: [ignitionTransformerParameters] },
  flameSensors: {
    list: true,
    tables: [uvSensorParameters, irSensorParameters, ionisationSensorParameters],
  },
  flameRelays: { list: true, tables: [flameRelayParameters] },
  airChangeCounters: { list: true, tables: [airChangeCounterParameters] },
} as const satisfies Record<string, Section>;

export const CONTROL_SECTIONS = {
  points: { list: false, tables: [pointsParameters] },
  curve: { list: false, tables: [curveParameters] },
  firingRate: {
    list: false,
    tables: [pressureFiringRateParameters, temperatureFiringRateParameters],
  },
  curveSupervision: { list: false, tables: [curveSupervisionParameters] },
} as const satisfies Record<string, Section>;

/** `field:` of a plant file, defaults filled in. A plant without a device leaves its list empty. */
export interface FieldDevices {
  readonly supply: SupplyParameters;
  readonly relays: readonly RelayParameters[];
  readonly servos: readonly ServoParameters[];
  readonly drives: readonly DriveParameters[];
  readonly transmitters: readonly TransmitterParameters[];
  readonly thermometers: readonly ThermometerParameters[];
  readonly switches: readonly PressureSwitchParameters[];
  readonly temperatureSwitches: readonly TemperatureSwitchParameters[];
  readonly interspaceComparators: readonly InterspaceComparatorParameters[];
  readonly closedProofs: readonly ClosedProofParameters[];
  readonly levelProbes: readonly LevelProbeParameters[];
  readonly waterCutOffs: readonly WaterCutOffParameters[];
  readonly feedControls: readonly FeedControlParameters[];
  readonly timeClocks: readonly TimeClockParameters[];
  readonly remoteContacts: readonly RemoteContactParameters[];
  readonly ignitionTransformers: readonly IgnitionTransformerParameters[];
  readonly flameSensors: readonly FlameSensorParameters[];
  readonly flameRelays: readonly FlameRelayParameters[];
  readonly airChangeCounters: readonly AirChangeCounterParameters[];
}

/** `control:` of a plant file. */
export interface ControlParameters {
  readonly points: PointsParameters;
  readonly curve: CurveParameters;
  readonly firingRate: FiringRateParameters;
  readonly curveSupervision: CurveSupervisionParameters;
}
