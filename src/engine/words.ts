/**
 * The words of an event: what was proved and which device was told what.
 * Words of the trade, so that a log reads without a key; sentences live in i18n.
 */
import type { CommandName, InputName } from '../../machines/burner/index.ts';

/** Inputs whose making or losing is an event of the run; the rest are conditions of a wait. */
export const PROOF_WORDS: Readonly<Record<InputName, string>> = {
  callForHeat: 'call for heat',
  resetPressed: 'reset pressed',
  emergencyStopClear: 'emergency stop clear',
  supplyInBand: 'supply in band',
  controlFuseMade: 'control fuse',
  safetyRelayFeedback: 'safety relay feedback',
  waterAboveFirst: 'water above first cut-off',
  waterAboveSecond: 'water above second cut-off',
  highLimitMade: 'high limit',
  furnacePressureInBand: 'furnace pressure in band',
  gasPressureAboveLow: 'gas pressure above low',
  gasPressureBelowHigh: 'gas pressure below high',
  airProved: 'airflow',
  flame: 'flame',
  upstreamValveClosed: 'upstream valve closed',
  downstreamValveClosed: 'downstream valve closed',
  interspaceEmpty: 'interspace empty',
  interspaceFull: 'interspace full',
  damperAtPurge: 'damper at purge',
  fanAtPurgeSpeed: 'fan at purge speed',
  damperAtLightOff: 'damper at light-off',
  fanAtLightOffSpeed: 'fan at light-off speed',
  fuelValveAtLightOff: 'fuel valve at light-off',
  airChangesCounted: 'air changes',
  positionsOnCurve: 'positions on curve',
  speedOnCurve: 'speed on curve',
  warmUpSatisfied: 'warm-up',
};

export interface DeviceWords {
  readonly device: string;
  readonly on: string;
  readonly off: string;
}

export const DEVICE_WORDS: Readonly<Record<CommandName, DeviceWords>> = {
  safetyRelay: { device: 'safety relay', on: 'pick up', off: 'drop out' },
  fan: { device: 'fan', on: 'run', off: 'stop' },
  spark: { device: 'spark', on: 'on', off: 'off' },
  pilotValve: { device: 'pilot valve', on: 'open', off: 'shut' },
  upstreamValve: { device: 'upstream valve', on: 'open', off: 'shut' },
  downstreamValve: { device: 'downstream valve', on: 'open', off: 'shut' },
  ventValve: { device: 'vent valve', on: 'open', off: 'shut' },
  alarm: { device: 'alarm', on: 'on', off: 'off' },
  countAir: { device: 'air-change counter', on: 'count', off: 'clear' },
};
