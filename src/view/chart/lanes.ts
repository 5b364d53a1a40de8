import type { Channel } from '../channels.ts';
import { terminalOf } from '../vocabulary.ts';
import { isOnTrain, type LanePlant } from './lane-plant.ts';

/**
 * A lane of the start chart: what a device was told, what it did, what was proved.
 * Every part is optional; a lane without any of its channels is left out.
 */
export interface Lane {
  readonly id: string;
  /** Message code of its name. */
  readonly name: string;
  readonly line: LaneLine | null;
  /** Channel of the position it was told to take, on the line's scale. */
  readonly asked: string | null;
  /** Commands (bits of `logic.commands`), each a bar while it is given. */
  readonly commanded: readonly string[];
  /** Names of inputs (bits of `logic.inputs`) that prove it. */
  readonly proved: readonly string[];
}

export interface LaneLine {
  readonly channel: string;
  readonly unit: string;
  readonly min: number;
  readonly max: number;
  /** The top of the scale follows the expected run; else it is a limit of the device. */
  readonly follows: boolean;
  /**
   * How far off the expected line is still as expected, share of the expected value; null where
   * nothing holds the device to a value, so that no band is drawn.
   */
  readonly tolerance: number | null;
}

/** The lanes of a plant in the order of a start. */
export function lanesOf(channels: readonly Channel[], plant: LanePlant): Lane[] {
  const units = new Map(channels.map((channel) => [channel.id, channel.unit]));
  const line = (
    channel: string,
    max: number,
    follows: boolean,
    tolerance: number | null = 0.05,
  ) => {
    const unit = units.get(channel);
    const min = unit === 'K' ? COLDEST_K : 0;
    return unit === undefined ? null : { channel, unit, min, max, follows, tolerance };
  };
  const asked = (channel: string): string | null => (units.has(channel) ? channel : null);
  const lane = (id: string, parts: Partial<Omit<Lane, 'id' | 'name'>>): Lane => ({
    id,
    name: `view.lane.${id}`,
    line: null,
    asked: null,
    commanded: [],
    proved: [],
    ...parts,
  });
  const valve = (id: string, proved: readonly string[] = []): Lane[] =>
    isOnTrain(plant, id)
      ? [
          lane(id, {
            line: line(`gas.${id}.opening`, 1, false),
            commanded: [terminalOf(id)],
            proved: plant.hasProofOfClosure === false ? [] : proved,
          }),
        ]
      : [];

  const all = [
    lane('fan', {
      line: line('fan.speed', FULL_SPEED_RPM, true, plant.hasVariableSpeedFan ? 0.05 : null),
      commanded: ['fan'],
      proved: plant.hasVariableSpeedFan ? ['fanAtPurgeSpeed', 'fanAtLightOffSpeed'] : [],
    }),
    lane(plant.hasOneServo === true ? 'position' : 'damper', {
      line: line('damper.feedback', QUARTER_TURN_DEG, false),
      asked: asked('damper.target'),
      proved: ['damperAtPurge', 'damperAtLightOff'],
    }),
    lane('airflow', {
      line: line('air.head.differential', FULL_HEAD_PA, true, 0.08),
      proved: ['airProved'],
    }),
    ...valve('vent-valve'),
    ...valve('upstream-valve', ['upstreamValveClosed']),
    ...valve('downstream-valve', ['downstreamValveClosed']),
    ...(plant.hasValveProving === true
      ? [
          lane('interspace', {
            line: line('gas.interspace.pressure', FULL_INTERSPACE_PA, true, 0.06),
            proved: ['interspaceEmpty', 'interspaceFull'],
          }),
        ]
      : []),
    ...(isOnTrain(plant, 'pilot-valve')
      ? [
          lane('pilot-spark', {
            line: line('gas.pilot-valve.opening', 1, false),
            commanded: ['pilotValve', 'spark'],
          }),
        ]
      : [
          lane('spark', {
            line: line('spark.power', FULL_SPARK_W, true, 0.5),
            commanded: ['spark'],
          }),
        ]),
    ...(plant.hasOneServo === true
      ? []
      : [
          lane('fuel-valve', {
            line: line('fuel-valve.feedback', QUARTER_TURN_DEG, false),
            asked: asked('fuel-valve.target'),
            proved: ['fuelValveAtLightOff'],
          }),
        ]),
    lane('flame', { line: line('flame.signal', FULL_SIGNAL_UA, true, 0.3), proved: ['flame'] }),
    vesselLane(),
  ];
  return all.filter((entry) => entry.line !== null || entry.commanded.length > 0);

  /** What the burner is there for: pressure, or temperature where nothing boils. */
  function vesselLane(): Lane {
    return plant.vesselKind === 'hot water'
      ? lane('flow-temperature', {
          line: line('vessel.temperature', FULL_TEMPERATURE_K, true, 0.02),
          proved: ['highLimitMade'],
        })
      : lane('vessel-pressure', {
          line: line('vessel.pressure', FULL_VESSEL_PA, true),
          proved: ['highLimitMade'],
        });
  }
}

/** Tops of the lanes' scales where no expected run says better. */
const COLDEST_K = 273.15;
const FULL_TEMPERATURE_K = 373.15;
const FULL_VESSEL_PA = 1_400_000;
const FULL_SPEED_RPM = 1900;
const QUARTER_TURN_DEG = 93;
const FULL_HEAD_PA = 3500;
const FULL_INTERSPACE_PA = 12000;
const FULL_SPARK_W = 150;
const FULL_SIGNAL_UA = 12;
