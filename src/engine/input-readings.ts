/** What stands behind each input of the machine: the reading, and the limit it is held against. */
import type { InputName } from '../../machines/burner/index.ts';
import type { QuantityKind, Unit } from '../quantity/index.ts';
import type { PlantFile, Profile } from './plant-file.ts';

export interface InputReading {
  /** Channel to show; null where the input has no reading behind it but the contact itself. */
  readonly channel: string | null;
  readonly limit: number | null;
  readonly unit: Unit;
  readonly kind: QuantityKind;
  readonly sense: 'above' | 'below' | 'at' | 'made';
}

const ZERO_C = 273.15;

const CONTACT_ONLY: InputReading = {
  channel: null,
  limit: null,
  unit: '1',
  kind: 'number',
  sense: 'made',
};

export function inputReadings(
  plant: PlantFile,
  profile: Profile,
): Readonly<Record<InputName, InputReading>> {
  const { field, control } = plant;
  const { points } = control;
  const pressure = (feeds: string, channel: string, kind: QuantityKind): InputReading => {
    const s = field.switches.find((one) => one.feeds === feeds);
    if (s === undefined) return CONTACT_ONLY;
    const sense = s.makesOn === 'rise' ? 'above' : 'below';
    return { channel, limit: s.makePa, unit: 'Pa', kind, sense };
  };
  /** A limit on the vessel, of pressure where it makes steam, of temperature where it does not. */
  const onVessel = (feeds: 'callForHeat' | 'highLimitMade' | 'warmUpSatisfied'): InputReading => {
    const s = field.temperatureSwitches.find((one) => one.feeds === feeds);
    if (s === undefined) return pressure(feeds, 'vessel.pressure', 'vessel pressure');
    const sense = s.makesOn === 'rise' ? 'above' : 'below';
    const channel =
      s.senses === 'return temperature' ? 'vessel.return-temperature' : 'vessel.temperature';
    return { channel, limit: s.makeC + ZERO_C, unit: 'K', kind: 'temperature', sense };
  };
  const angle = (channel: string, limit: number): InputReading => ({
    channel,
    limit,
    unit: '°',
    kind: 'angle',
    sense: 'at',
  });
  const speed = (limit: number): InputReading => ({
    channel: 'fan.feedback',
    limit,
    unit: 'rpm',
    kind: 'shaft speed',
    sense: 'at',
  });
  const closed = (edge: string): InputReading => ({
    channel: `gas.${edge}.opening`,
    limit: 0,
    unit: '1',
    kind: 'share',
    sense: 'at',
  });
  const level = (stands: 'first' | 'second'): InputReading => {
    const cutOff = field.waterCutOffs.find((one) => one.stands === stands);
    if (cutOff === undefined) return CONTACT_ONLY;
    const { breakM } = cutOff;
    return { channel: 'vessel.level', limit: breakM, unit: 'm', kind: 'level', sense: 'above' };
  };
  const comparator = field.interspaceComparators[0];
  const flameRelay = field.flameRelays[0];
  const interspace = 'gas.interspace.pressure';
  return {
    callForHeat: onVessel('callForHeat'),
    resetPressed: CONTACT_ONLY,
    emergencyStopClear: CONTACT_ONLY,
    supplyInBand: CONTACT_ONLY,
    controlFuseMade: CONTACT_ONLY,
    safetyRelayFeedback: CONTACT_ONLY,
    waterAboveFirst: level('first'),
    waterAboveSecond: level('second'),
    highLimitMade: onVessel('highLimitMade'),
    furnacePressureInBand: pressure('furnacePressureInBand', 'furnace.pressure', 'air pressure'),
    gasPressureAboveLow: pressure('gasPressureAboveLow', 'gas.regulated.pressure', 'gas pressure'),
    gasPressureBelowHigh: pressure(
      'gasPressureBelowHigh',
      'gas.regulated.pressure',
      'gas pressure',
    ),
    airProved: pressure('airProved', 'air.head.differential', 'air pressure'),
    flame:
      flameRelay === undefined
        ? CONTACT_ONLY
        : {
            channel: 'flame.signal',
            limit: flameRelay.thresholdMicroamps,
            unit: 'µA',
            kind: 'flame current',
            sense: 'above',
          },
    upstreamValveClosed: closed('upstream-valve'),
    downstreamValveClosed: closed('downstream-valve'),
    interspaceEmpty:
      comparator === undefined
        ? CONTACT_ONLY
        : {
            channel: interspace,
            limit: comparator.emptyPa,
            unit: 'Pa',
            kind: 'gas pressure',
            sense: 'below',
          },
    interspaceFull:
      comparator === undefined
        ? CONTACT_ONLY
        : {
            channel: interspace,
            limit: comparator.fallLimitPa,
            unit: 'Pa',
            kind: 'gas pressure',
            sense: 'above',
          },
    damperAtPurge: angle('damper.feedback', points.purgeDamperDeg),
    fanAtPurgeSpeed: speed(points.purgeFanRpm),
    damperAtLightOff: angle('damper.feedback', points.lightOffDamperDeg),
    fanAtLightOffSpeed: speed(points.lightOffFanRpm),
    fuelValveAtLightOff: angle('fuel-valve.feedback', points.lightOffFuelValveDeg),
    airChangesCounted: {
      channel: 'furnace.air-changes',
      limit: profile.timings.requiredAirChanges,
      unit: '1',
      kind: 'number',
      sense: 'above',
    },
    positionsOnCurve: CONTACT_ONLY,
    speedOnCurve: CONTACT_ONLY,
    warmUpSatisfied: onVessel('warmUpSatisfied'),
  };
}
