/**
 * The terminals of the burner machine: all it is told and all it can drive.
 *
 * The machine sees a packed word of logical inputs, one bit a terminal in the order
 * of INPUTS, and hands out a packed word of commands and one target for the
 * positioned devices. It knows nothing of what hangs on a terminal.
 */
export const INPUTS = [
  'callForHeat',
  'resetPressed',
  'emergencyStopClear',
  'supplyInBand',
  'controlFuseMade',
  'safetyRelayFeedback',
  'waterAboveFirst',
  'waterAboveSecond',
  'highLimitMade',
  'furnacePressureInBand',
  'gasPressureAboveLow',
  'gasPressureBelowHigh',
  'airProved',
  'flame',
  'upstreamValveClosed',
  'downstreamValveClosed',
  'interspaceEmpty',
  'interspaceFull',
  'damperAtPurge',
  'fanAtPurgeSpeed',
  'damperAtLightOff',
  'fanAtLightOffSpeed',
  'fuelValveAtLightOff',
  'airChangesCounted',
  'positionsOnCurve',
  'speedOnCurve',
  'warmUpSatisfied',
] as const;
export type InputName = (typeof INPUTS)[number];

export const COMMANDS = [
  'safetyRelay',
  'fan',
  'spark',
  'pilotValve',
  'upstreamValve',
  'downstreamValve',
  'ventValve',
  'alarm',
  'countAir',
] as const;
export type CommandName = (typeof COMMANDS)[number];

/** Where the positioned devices (damper, fan speed, fuel valve) are told to go. */
export const TARGETS = ['rest', 'purge', 'light-off', 'low-fire', 'curve'] as const;
export type TargetName = (typeof TARGETS)[number];

export const STEPS = [
  'standby',
  'at-rest check',
  'valve proving: empty',
  'valve proving: hold empty',
  'valve proving: fill',
  'valve proving: hold full',
  'drive to purge',
  'purge',
  'drive to light-off',
  'spark check',
  'pilot trial',
  'pilot proving',
  'main trial',
  'main proving',
  'low-fire hold',
  'modulation',
  'run down',
  'post-purge',
  'lockout',
] as const;
export type StepName = (typeof STEPS)[number];

export const CAUSES = [
  'safety relay did not follow',
  'air proved with fan at rest',
  'flame seen at rest',
  'valve not proved closed',
  'gas pressure low',
  'gas pressure high',
  'interspace did not empty',
  'upstream valve passes',
  'interspace did not fill',
  'downstream or vent valve passes',
  'purge position not proved',
  'purge speed not proved',
  'airflow not proved',
  'light-off position not proved',
  'flame seen before fuel',
  'pilot not lit',
  'pilot lost',
  'main not lit',
  'main lost',
  'flame lost in service',
  'airflow lost in service',
  'position left its curve',
  'speed left its curve',
  'warm-up not satisfied',
  'water low',
  'water very low',
  'high limit open',
  'furnace pressure high',
  'emergency stop',
  'supply out of band',
  'control fuse open',
  'reset held',
] as const;
export type Cause = (typeof CAUSES)[number];

/** What a plant asks of the one machine; plain data in the plant file. */
export interface Variant {
  readonly valveProving: 'before start' | 'after run-down' | 'none';
  /** 'proving': normally shut, opens to empty the interspace. 'normally open': shut only while main valves are commanded. */
  readonly vent: 'none' | 'proving' | 'normally open';
  readonly proofOfClosure: boolean;
  readonly fan: 'fixed speed' | 'variable speed';
  readonly ignition: 'interrupted pilot' | 'intermittent pilot' | 'direct spark';
}

export function bitOf(input: InputName): number {
  return 1 << INPUTS.indexOf(input);
}
export function has(word: number, input: InputName): boolean {
  return (word & bitOf(input)) !== 0;
}
