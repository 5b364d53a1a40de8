/**
 * The burner machine's terminals as the field sees them: which bit of the packed words is which,
 * and which number is which target. A test holds this table equal to the machine's own.
 */
export const INPUT_BITS = {
  callForHeat: 1 << 0,
  resetPressed: 1 << 1,
  emergencyStopClear: 1 << 2,
  supplyInBand: 1 << 3,
  controlFuseMade: 1 << 4,
  safetyRelayFeedback: 1 << 5,
  waterAboveFirst: 1 << 6,
  waterAboveSecond: 1 << 7,
  highLimitMade: 1 << 8,
  furnacePressureInBand: 1 << 9,
  gasPressureAboveLow: 1 << 10,
  gasPressureBelowHigh: 1 << 11,
  airProved: 1 << 12,
  flame: 1 << 13,
  upstreamValveClosed: 1 << 14,
  downstreamValveClosed: 1 << 15,
  interspaceEmpty: 1 << 16,
  interspaceFull: 1 << 17,
  damperAtPurge: 1 << 18,
  fanAtPurgeSpeed: 1 << 19,
  damperAtLightOff: 1 << 20,
  fanAtLightOffSpeed: 1 << 21,
  fuelValveAtLightOff: 1 << 22,
  airChangesCounted: 1 << 23,
  positionsOnCurve: 1 << 24,
  speedOnCurve: 1 << 25,
  warmUpSatisfied: 1 << 26,
} as const;
export type InputTerminal = keyof typeof INPUT_BITS;
export const ALL_INPUTS = (1 << 27) - 1;

export const COMMAND_BITS = {
  safetyRelay: 1 << 0,
  fan: 1 << 1,
  spark: 1 << 2,
  pilotValve: 1 << 3,
  upstreamValve: 1 << 4,
  downstreamValve: 1 << 5,
  ventValve: 1 << 6,
  alarm: 1 << 7,
  countAir: 1 << 8,
} as const;

/** Where the positioned devices are told to go. */
export const TARGET_INDEX = { rest: 0, purge: 1, 'light-off': 2, 'low-fire': 3, curve: 4 } as const;
