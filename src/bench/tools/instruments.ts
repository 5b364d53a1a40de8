/**
 * Every number of the instruments, on one page: what a bag like ours might hold. Training values;
 * an instrument's own sheet decides. Changing one changes what a learner reads, never the run.
 */

/** A digital manometer; a range is a sensor of its own behind the same display. */
export interface ManometerRange {
  /** Both ways of zero, Pa. */
  readonly fullPa: number;
  readonly resolutionPa: number;
  /** Time constant of hose and sensor: a narrow hose fills slowly, s. */
  readonly hoseLagS: number;
  /** Above this the sensor is strained and its zero stays off, Pa. */
  readonly overloadPa: number;
  readonly overloadShiftPa: number;
  /** How far the zero may wander after connecting, either way, Pa. */
  readonly zeroDriftPa: number;
}
export const MANOMETER_RANGES = {
  // Draught, furnace and windbox: a hundredth of a millibar is worth seeing.
  low: {
    fullPa: 2500,
    resolutionPa: 1,
    hoseLagS: 0.4,
    overloadPa: 15000,
    overloadShiftPa: 40,
    zeroDriftPa: 5,
  },
  // Gas behind the regulator and at the burner; it shows a tenth more than its name says.
  mid: {
    fullPa: 22000,
    resolutionPa: 10,
    hoseLagS: 0.3,
    overloadPa: 60000,
    overloadShiftPa: 150,
    zeroDriftPa: 25,
  },
  // Supply mains of a works.
  high: {
    fullPa: 200000,
    resolutionPa: 100,
    hoseLagS: 0.2,
    overloadPa: 400000,
    overloadShiftPa: 1000,
    zeroDriftPa: 150,
  },
} as const satisfies Record<string, ManometerRange>;
/** A sensor warms to its place in about this time, and its zero with it, s. */
export const ZERO_DRIFT_S = 600;
/** After so long without a new zero the last digit is not to be trusted, s. */
export const ZERO_GOOD_FOR_S = 900;

export const MULTIMETER = {
  /** Counts before the range changes, as common hand-held meters have them. */
  counts: 6000,
  /** Its converter and display: until then the digits still run, s. */
  lagS: 0.3,
  clampResolutionA: 0.01,
  clampFullA: 400,
} as const;

export const FLAME_METER = {
  resolutionMicroamps: 0.1,
  fullMicroamps: 100,
  /** Heavily smoothed, so that a flickering flame can be read, s. */
  lagS: 1,
} as const;

export const ANALYSER = {
  /** Warming up and taking its zero from fresh air, s. */
  zeroS: 60,
  /** How far its cells are off when cold, and how fast that goes, s. */
  coldOxygen: -0.006,
  coldTrace: 40e-6,
  coldLagS: 15,
  /** From the probe to the cells, then the cells themselves, s: as the one in the flue has them. */
  delayS: 4,
  oxygenCellS: 5,
  traceCellS: 12,
  /** Oxygen of dry air. */
  airOxygen: 0.2095,
  /** Less oxygen than this: flue gas with water in it goes through the trap. */
  wetOxygen: 0.18,
  /** The trap is full after so long in wet gas, s; then water takes up a share of CO and NO. */
  trapS: 1500,
  washedShare: 0.15,
  /** Past this the cell for CO is shut off to save it. */
  carbonMonoxideFull: 2e-3,
  nitricOxideFull: 2e-3,
  /** Reach of the probe into the flue, m. */
  probeM: { long: 0.5, short: 0.12 },
  /** Air that gets into the sample close to the wall, share at the wall itself. */
  wallAirShare: 0.4,
  /** A flue is as wide as keeps its gas at this velocity at rated flow, m/s. */
  flueVelocityMS: 7,
} as const;

export const LEAK_SPRAY = {
  /** Less than this through a joint makes no bubble that an eye sees, kg/s: about one a second. */
  seenKgS: 1e-8,
  /** From here bubbles come fast; from here they are blown off, kg/s: 5 and 50 litres an hour. */
  quickKgS: 1e-6,
  blownKgS: 1e-5,
  /** Without this pressure behind it a leak cannot blow a bubble, Pa. */
  leastPa: 500,
  /** How long one must watch, s. */
  watchS: 5,
} as const;

export interface StrobeRange {
  /** Slowest and fastest flash, per minute. */
  readonly leastRpm: number;
  readonly mostRpm: number;
}
export const STROBE_RANGES = {
  high: { leastRpm: 1000, mostRpm: 12000 },
  low: { leastRpm: 60, mostRpm: 1500 },
} as const satisfies Record<string, StrobeRange>;
/** How long it takes to bring the mark to rest, s, and how far a mark at rest may creep, rpm. */
export const STROBE = { tuneS: 1.5, creepRpm: 8, resolutionRpm: 1 } as const;

export const THERMOMETER = {
  lagS: 8,
  resolutionK: 0.1,
  fullK: 873.15,
  /** A tip pressed on a pipe takes this share of the way from the air to what flows inside. */
  pipeShare: 0.93,
  /** The wall of a flue is far cooler than its gas. */
  flueWallShare: 0.55,
  /** What the lagging of a boiler lets through to its casing. */
  casingShare: 0.12,
  /** The stem of a pocket leads a little heat away. */
  pocketShare: 0.99,
} as const;
