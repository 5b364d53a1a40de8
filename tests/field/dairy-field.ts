import {
  airChangeCounterParameters,
  closedProofParameters,
  curveSupervisionParameters,
  type FieldParameters,
  type FlameSensorParameters,
  flameRelayParameters,
  ignitionTransformerParameters,
  interspaceComparatorParameters,
  irSensorParameters,
  levelProbeParameters,
  modulatingFeedParameters,
  pointsParameters,
  pressureFiringRateParameters,
  pressureSwitchParameters,
  type RelayParameters,
  relayParameters,
  servoParameters,
  supplyParameters,
  transmitterParameters,
  variableSpeedParameters,
  waterCutOffParameters,
} from '../../src/field/index.ts';
import { fillDefaults } from './fill-defaults.ts';
import { usualWiring } from './usual-wiring.ts';

function relay(id: string, terminal: RelayParameters['terminal']): RelayParameters {
  return fillDefaults(relayParameters, { id, terminal });
}

/** A healthy field of the dairy kind: every device once, variable-speed fan, infrared sensing. */
export function dairyField(
  flameSensor: FlameSensorParameters = fillDefaults(irSensorParameters, {
    id: 'flame-sensor',
    kind: 'ir',
  }),
): FieldParameters {
  return wired({
    field: {
      supply: fillDefaults(supplyParameters, {
        mainsVolts: 120,
        mainsHz: 60,
        nominalVolts: 120,
        lowVolts: 102,
        highVolts: 132,
        lowHz: 57,
        highHz: 63,
      }),
      relays: [
        relay('fan-relay', 'fan'),
        relay('spark-relay', 'spark'),
        relay('pilot-valve-relay', 'pilotValve'),
        relay('upstream-valve-relay', 'upstreamValve'),
        relay('downstream-valve-relay', 'downstreamValve'),
        relay('vent-valve-relay', 'ventValve'),
        relay('alarm-relay', 'alarm'),
        relay('safety-relay', 'safetyRelay'),
      ],
      servos: [
        fillDefaults(servoParameters, {
          id: 'damper',
          moves: 'damper',
          slewDegS: 3,
          endSwitch: 'fitted',
        }),
        fillDefaults(servoParameters, { id: 'fuel-valve', moves: 'fuel valve', slewDegS: 3 }),
      ],
      drives: [
        fillDefaults(variableSpeedParameters, {
          id: 'fan',
          kind: 'variable speed',
          ratedTorqueNm: 81.4,
          ratedCurrentA: 24,
          magnetisingCurrentA: 9,
          inertiaKgM2: 3,
          rampUpS: 25,
          rampDownS: 25,
          currentLimitA: 32,
        }),
      ],
      transmitters: [
        fillDefaults(transmitterParameters, {
          id: 'interspace',
          senses: 'interspace',
          highPa: 25000,
        }),
        fillDefaults(transmitterParameters, { id: 'vessel', senses: 'vessel', highPa: 1.6e6 }),
      ],
      switches: [
        fillDefaults(pressureSwitchParameters, {
          id: 'airflow',
          senses: 'windbox-furnace differential',
          feeds: 'airProved',
          makesOn: 'rise',
          makePa: 50,
          breakPa: 30,
        }),
        fillDefaults(pressureSwitchParameters, {
          id: 'low-gas',
          senses: 'regulated gas',
          feeds: 'gasPressureAboveLow',
          makesOn: 'rise',
          makePa: 6500,
          breakPa: 6000,
        }),
        fillDefaults(pressureSwitchParameters, {
          id: 'high-gas',
          senses: 'regulated gas',
          feeds: 'gasPressureBelowHigh',
          makesOn: 'fall',
          makePa: 13500,
          breakPa: 14000,
        }),
        fillDefaults(pressureSwitchParameters, {
          id: 'furnace-pressure',
          senses: 'furnace',
          feeds: 'furnacePressureInBand',
          makesOn: 'fall',
          makePa: 2000,
          breakPa: 2500,
        }),
        fillDefaults(pressureSwitchParameters, {
          id: 'operating-control',
          senses: 'vessel',
          feeds: 'callForHeat',
          makesOn: 'fall',
          makePa: 1.15e6,
          breakPa: 1.28e6,
          followsSetpoint: true,
        }),
        fillDefaults(pressureSwitchParameters, {
          id: 'high-limit',
          senses: 'vessel',
          feeds: 'highLimitMade',
          makesOn: 'fall',
          makePa: 1.3e6,
          breakPa: 1.35e6,
          manualReset: true,
        }),
        fillDefaults(pressureSwitchParameters, {
          id: 'warm-up',
          senses: 'vessel',
          feeds: 'warmUpSatisfied',
          makesOn: 'rise',
          makePa: 6e5,
          breakPa: 5e5,
        }),
      ],
      thermometers: [],
      temperatureSwitches: [],
      levelProbes: [
        fillDefaults(levelProbeParameters, { id: 'level-probe', lowM: -0.35, highM: 0.35 }),
      ],
      feedControls: [
        fillDefaults(modulatingFeedParameters, {
          id: 'feed-control',
          kind: 'modulating',
          probe: 'level-probe',
          bandM: 0.2,
          feedForward: 1,
          fullSteamKgS: 4,
        }),
      ],
      timeClocks: [],
      remoteContacts: [],
      interspaceComparators: [
        fillDefaults(interspaceComparatorParameters, {
          id: 'interspace',
          emptyPa: 500,
          riseLimitPa: 5000,
          fallLimitPa: 5000,
        }),
      ],
      closedProofs: [
        fillDefaults(closedProofParameters, { id: 'upstream-closed', valve: 'upstream valve' }),
        fillDefaults(closedProofParameters, { id: 'downstream-closed', valve: 'downstream valve' }),
      ],
      waterCutOffs: [
        fillDefaults(waterCutOffParameters, {
          id: 'first',
          stands: 'first',
          breakM: -0.1,
          makeM: -0.07,
        }),
        fillDefaults(waterCutOffParameters, {
          id: 'second',
          stands: 'second',
          breakM: -0.16,
          makeM: -0.13,
          manualReset: true,
        }),
      ],
      ignitionTransformers: [
        fillDefaults(ignitionTransformerParameters, { id: 'transformer', ratedW: 60 }),
      ],
      flameSensors: [flameSensor],
      flameRelays: [
        fillDefaults(flameRelayParameters, { id: 'flame-relay', sensor: flameSensor.id }),
      ],
      airChangeCounters: [
        fillDefaults(airChangeCounterParameters, {
          id: 'counter',
          referenceFlowM3S: 2.1,
          referencePa: 1400,
          volumeM3: 14,
          changesRequired: 8,
        }),
      ],
    },
    control: {
      points: fillDefaults(pointsParameters, {
        purgeDamperDeg: 90,
        purgeFanRpm: 1760,
        lightOffDamperDeg: 25,
        lightOffFanRpm: 900,
        lightOffFuelValveDeg: 15,
      }),
      curve: {
        rates: [0.2, 0.4, 0.6, 0.8, 1],
        damperDeg: [25, 39.25, 53.5, 67.75, 82],
        fanRpm: [900, 1105, 1310, 1515, 1720],
        fuelValveDeg: [15, 32.5, 50, 67.5, 85],
      },
      firingRate: fillDefaults(pressureFiringRateParameters, {
        kind: 'pressure',
        setpointPa: 1.2e6,
        secondSetpointPa: 1e6,
        proportionalBandPa: 153000,
        integralS: 300,
      }),
      curveSupervision: fillDefaults(curveSupervisionParameters, {}),
    },
  });
}

/** The devices with a plain wiring of their own. */
export function wired(devices: Omit<FieldParameters, 'wiring'>): FieldParameters {
  return { ...devices, wiring: usualWiring(devices.field) };
}
