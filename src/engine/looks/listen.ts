/** What ears find: loudness from the physics of the moment and of the last seconds recorded. */
import { escapeKgS } from '../../plant/gas/index.ts';
import { firstFrame, frameAt } from '../frame-store.ts';
import type { RunState } from '../run-state.ts';

export const HEARD_WHATS = [
  'fan',
  'belt squeal',
  'regulator hunting',
  'gas at the vent',
  'gas at a joint',
  'spark',
  'valve',
  'flame rumble',
  'safety valve',
  'water hammer',
] as const;
export type HeardWhat = (typeof HEARD_WHATS)[number];

export interface Heard {
  readonly what: HeardWhat;
  /** 0 just heard, 1 drowns the rest. */
  readonly loudness: number;
}

const HEARD = 0.02;
const SQUEALS_FROM_RPM = 60;
const SLIP_THAT_SCREAMS = 0.25;
/** Swings of the outlet within these seconds, and how many turns of it are a hunt. */
const HUNT_FRAMES = 40;
const HUNT_TURNS = 4;
const HUNT_SHARE = 0.01;
const HUNT_SHARE_LOUD = 0.2;
/** A vent or a joint hisses at this, kg/s; about 1 m³/h and 0.5 m³/h. */
const VENT_LOUD_KGS = 2e-4;
const JOINT_LOUD_KGS = 1e-4;
const CLICK_FRAMES = 10;
const CLICK_STROKE = 0.02;
/** Water this close to boiling at its pressure makes steam at the hottest metal and knocks. */
const KNOCKS_FROM = 0.6;

/** The loudest first. */
export function listen(run: RunState): readonly Heard[] {
  const loudness: Record<HeardWhat, number> = {
    fan: fan(run),
    'belt squeal': belt(run),
    'regulator hunting': hunting(run),
    'gas at the vent': vent(run),
    'gas at a joint': joints(run),
    spark: spark(run),
    valve: valve(run),
    'flame rumble': rumble(run),
    'safety valve': safetyValve(run),
    'water hammer': knocking(run),
  };
  return HEARD_WHATS.map((what) => ({ what, loudness: Math.min(1, loudness[what]) }))
    .filter((one) => one.loudness >= HEARD)
    .sort((a, b) => b.loudness - a.loudness);
}

function fan({ field, faults }: RunState): number {
  return (0.8 * field.outputs.fanRpm) / faults.live.airPath.fan.ratedSpeedRpm;
}

/** A belt squeals by the speed it loses while it is asked to carry torque. */
function belt({ field, faults }: RunState): number {
  const { drive } = field;
  if (drive === null || drive.fanRpm < SQUEALS_FROM_RPM) return 0;
  const speed = Math.min(1, (2 * drive.fanRpm) / faults.live.airPath.fan.ratedSpeedRpm);
  return (speed * drive.parameters.beltSlip) / SLIP_THAT_SCREAMS;
}

/** The outlet goes up and down by itself: turns of it, not one fall and rise of a valve opening. */
function hunting({ store, channels, faults }: RunState): number {
  const outlet = channels.findIndex(({ id }) => id === 'gas.regulated.pressure');
  const from = Math.max(firstFrame(store), store.count - HUNT_FRAMES);
  const regulator = faults.live.gasTrain.edges.find(({ kind }) => kind === 'regulator');
  if (outlet < 0 || store.count - from < HUNT_FRAMES || regulator?.kind !== 'regulator') return 0;
  const least = HUNT_SHARE * regulator.setpointPa;
  let turns = 0;
  let rising: boolean | null = null;
  let turnedAt = frameAt(store, from)[outlet] as number;
  let high = turnedAt;
  let low = turnedAt;
  for (let k = from + 1; k < store.count; k++) {
    const value = frameAt(store, k)[outlet] as number;
    high = Math.max(high, value);
    low = Math.min(low, value);
    const isUp = value > turnedAt;
    if (rising === isUp) {
      turnedAt = value;
    } else if (Math.abs(value - turnedAt) >= least) {
      if (rising !== null) turns += 1;
      rising = isUp;
      turnedAt = value;
    }
  }
  return turns < HUNT_TURNS ? 0 : (high - low) / (HUNT_SHARE_LOUD * regulator.setpointPa);
}

function vent({ plant }: RunState): number {
  const { vent: place } = plant.places;
  return place < 0 ? 0 : Math.max(0, plant.gas.flowKgS[place] as number) / VENT_LOUD_KGS;
}

function joints({ plant }: RunState): number {
  let most = 0;
  for (const kgS of escapeKgS(plant.gas)) most = Math.max(most, kgS);
  return most / JOINT_LOUD_KGS;
}

/** At the gap, or on its way to metal along the lead: what leaves the transformer crackles. */
function spark({ plant, field }: RunState): number {
  let watts = plant.flame.sparkW;
  for (const { fedShare, parameters: p } of field.ignitionTransformers) {
    watts += p.ratedW * p.health * fedShare * fedShare * p.leadTracking;
  }
  return (0.5 * watts) / plant.flame.ignition.ratedSparkW;
}

/** A stem that has gone far within the last second. */
function valve({ store, channels }: RunState): number {
  const from = Math.max(firstFrame(store), store.count - CLICK_FRAMES);
  if (store.count - from < 2) return 0;
  const first = frameAt(store, from);
  const last = frameAt(store, store.count - 1);
  let most = 0;
  channels.forEach(({ id }, k) => {
    if (!id.startsWith('gas.') || !id.endsWith('-valve.opening') || id.startsWith('gas.fuel'))
      return;
    most = Math.max(most, Math.abs((last[k] as number) - (first[k] as number)));
  });
  return most < CLICK_STROKE ? 0 : 0.3 + 0.3 * most;
}

/** A flame that lifts is uneasy, and louder than one that sits. */
function rumble({ plant }: RunState): number {
  const { mainIntensity, mainLift, pilotIntensity } = plant.flame;
  return 0.05 * pilotIntensity + 0.5 * mainIntensity * (1 + mainLift);
}

function safetyValve({ plant }: RunState): number {
  const { safetyValveKgS, parameters } = plant.vessel;
  return (3 * safetyValveKgS) / parameters.safetyValveKgS;
}

function knocking({ plant }: RunState): number {
  const { vessel, ambient } = plant;
  if (vessel.parameters.kind !== 'hot water' || vessel.heatW <= 0) return 0;
  const boiling = vessel.saturation.pressurePa / (vessel.gaugePa + ambient.pressurePa);
  return (boiling - KNOCKS_FROM) / (1 - KNOCKS_FROM);
}
