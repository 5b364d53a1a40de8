import type { SteamParameters } from './vessel-parameters.ts';
import type { VesselFeed, VesselState } from './vessel-state.ts';

/** Above this share of its volume a vessel full of water takes less and less. */
const FULL_FROM = 0.97;
const FULL_OVER = 0.02;

/**
 * Feed valve and feed pump.
 *
 * Equation: the valve follows its demand with a first-order lag, not at all within its stiction;
 *   pump and valve in series, p_shut-off − p = (R_pump + R_valve/opening²) q², so that a vessel at
 *   higher pressure gets less and none above the pump's own. A check valve stops backflow.
 * Valid for: a centrifugal pump near its curve's quadratic part, a valve of linear characteristic.
 * Left out: run-up of the pump, its recirculation, the economiser.
 */
export function stepFeedWater(
  state: VesselState,
  p: SteamParameters,
  feed: VesselFeed,
  spanS: number,
): void {
  const apart = feed.feedDemand - state.feedOpening;
  const moves = apart > p.feedValveStiction || apart < -p.feedValveStiction;
  if (moves && !p.feedValveStuck) {
    state.feedOpening += (apart * spanS) / (p.feedValveS + spanS);
    if (state.feedOpening < 0) state.feedOpening = 0;
    else if (state.feedOpening > 1) state.feedOpening = 1;
  }
  const opening = Math.max(state.feedOpening, p.feedValveLeak);
  const drop = p.feedShutOffPa - state.gaugePa;
  if (!feed.pumpFed || !p.feedPumpRuns || drop <= 0 || opening <= 0) {
    state.feedKgS = 0;
    return;
  }
  const { pumpDropFactor, valveDropFactor, volumeM3 } = state.prepared;
  const flow = Math.sqrt(drop / (pumpDropFactor + valveDropFactor / (opening * opening)));
  const full = (state.waterM3 / volumeM3 - FULL_FROM) / FULL_OVER;
  state.feedKgS = full <= 0 ? flow : full < 1 ? flow * (1 - full) : 0;
}

export function prepareFeedWater(state: VesselState, p: SteamParameters): void {
  const all = (p.feedShutOffPa - p.normalPressurePa) / (p.feedKgS * p.feedKgS);
  state.prepared.pumpDropFactor = p.feedPumpDropShare * all;
  state.prepared.valveDropFactor = (1 - p.feedPumpDropShare) * all;
}
