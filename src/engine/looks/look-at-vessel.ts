/** Eyes at the vessel: glass, gauge, limits, feed, fittings. */
import type { RunState } from '../run-state.ts';
import { openingWord } from './look-at-gas.ts';
import { type LookWord, roughly, type Seen, seen, seenInside } from './look-reading.ts';

const GLASS_END_M = 0.005;
const FILM = 0.05;
const TURNING = 0.01;
const DRY_KGS = 1e-4;
const BLOWS_SHARE = 0.2;
const ZERO_C = 273.15;

export function lookAtGlass({ plant, faults }: RunState): Seen | null {
  const p = faults.live.vessel;
  if (p.kind === 'hot water') return null;
  const { gaugeGlassM } = plant.vessel;
  const [low, high] = glassEnds(faults.live);
  const words: LookWord[] = [
    gaugeGlassM <= low + GLASS_END_M
      ? 'look.glass.empty'
      : gaugeGlassM >= high - GLASS_END_M
        ? 'look.glass.full'
        : 'look.glass.level',
    p.gaugeGlassCockShut ? 'look.glass.cock-shut' : 'look.glass.cocks-open',
  ];
  return seen(words, { levelM: roughly(Math.max(low, Math.min(high, gaugeGlassM)), 0.005) });
}

/** The dial on the vessel itself, which needs no wires. */
export function lookAtGauge({ plant }: RunState): Seen {
  const { vessel } = plant;
  const pressurePa = Math.round(vessel.gaugePa / 5000) * 5000;
  return seen(['look.gauge.reads'], {
    pressurePa,
    ...(vessel.parameters.kind === 'hot water'
      ? { temperatureC: roughly(vessel.waterTemperatureK - ZERO_C, 1) }
      : {}),
  });
}

/**
 * Buttons of the devices that latch: they stand out when tripped, which is all that an open contact
 * of such a device looks like.
 */
export function lookAtLimits({ field }: RunState): Seen | null {
  const latching = [
    ...field.airSwitches,
    ...field.slowSwitches,
    ...field.temperatureSwitches,
    ...field.waterCutOffs,
  ].filter(({ parameters }) => parameters.manualReset);
  if (latching.length === 0) return null;
  const isOut = ({ snap }: (typeof latching)[number]) => snap.tripped || snap.open;
  return seen(
    [latching.some(isOut) ? 'look.limit.tripped' : 'look.limit.in'],
    Object.fromEntries(latching.map((one) => [one.parameters.id, isOut(one) ? 1 : 0])),
  );
}

export function lookAtProbe({ faults }: RunState): Seen | null {
  const probe = faults.live.field.levelProbes[0];
  if (probe === undefined) return null;
  return seenInside([probe.fouling > FILM ? 'look.probe.film' : 'look.probe.clean'], {
    filmShare: roughly(probe.fouling, 0.1),
  });
}

export function lookAtFeedValve({ plant, faults }: RunState): Seen | null {
  const p = faults.live.vessel;
  if (p.kind === 'hot water' || p.feedValveS === 0) return null;
  const opening = plant.vessel.feedOpening;
  return seen([openingWord(opening)], { openShare: roughly(opening, 0.05) });
}

/** The shaft of the feed pump, or of the circulating pump. */
export function lookAtPump({ field, faults, plant }: RunState): Seen {
  const p = faults.live.vessel;
  const sound = p.kind === 'hot water' ? p.circulatingPumpRuns : p.feedPumpRuns;
  const fed = field.outputs.feedPump && (p.kind === 'hot water' || plant.vesselFeed.pumpFed);
  return seen([sound && fed ? 'look.pump.turns' : 'look.pump.still']);
}

export function lookAtSafetyValve({ plant }: RunState): Seen {
  const { safetyValveKgS, parameters } = plant.vessel;
  const share = safetyValveKgS / parameters.safetyValveKgS;
  if (share < TURNING) return seen(['look.safety-valve.dry'], { plumeShare: 0 });
  return seen([share < BLOWS_SHARE ? 'look.safety-valve.wisp' : 'look.safety-valve.blows'], {
    plumeShare: roughly(Math.min(1, share), 0.05),
  });
}

export function lookAtDrain({ faults }: RunState): Seen | null {
  const p = faults.live.vessel;
  if (p.kind === 'hot water') return null;
  return seen([p.waterLossKgS > DRY_KGS ? 'look.drain.runs' : 'look.drain.dry'], {
    flowKgS: roughly(p.waterLossKgS, 0.1),
  });
}

/** A glass spans what the level probe does. */
function glassEnds({ field }: RunState['faults']['live']): readonly [number, number] {
  const probe = field.levelProbes[0];
  return probe === undefined ? [-0.3, 0.3] : [probe.lowM, probe.highM];
}
