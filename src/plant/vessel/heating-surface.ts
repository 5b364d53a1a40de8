import type { VesselState } from './vessel-state.ts';

/** Water and metal near the end of the steam tables take no more heat; a sound plant is far away. */
const FADES_FROM_K = 600;
const FADES_OVER_K = 15;
/** No frost: cold air takes no more heat out of water this cold. */
const FREEZING_K = 274.15;

/**
 * Heat out of the heating surface into the water, mean over the step.
 *
 * Equation: a store E with dE/dt = Q − E/T, by the trapezoidal rule; what has come in and not gone
 *   on is kept in E, so the lag loses nothing.
 * Valid for: steps up to twice the lag; without a lag the heat goes straight through.
 *
 * @param wetShare share of the surface that has water behind it; what dry tubes do not pass on is
 *   not taken from the gas
 */
export function passHeat(
  state: VesselState,
  heatW: number,
  wetShare: number,
  spanS: number,
): number {
  const { heatLagS } = state.parameters;
  let passedW = heatW;
  if (heatLagS > 0) {
    const before = state.surfaceHeatJ / heatLagS;
    passedW = before + (0.5 * spanS * (heatW - before)) / (heatLagS + 0.5 * spanS);
  }
  const hot = (state.waterTemperatureK - FADES_FROM_K) / FADES_OVER_K;
  let taken = wetShare;
  if (hot > 0) taken *= hot < 1 ? 1 - hot : 0;
  if (passedW < 0 && state.waterTemperatureK < FREEZING_K) taken = 0;
  state.surfaceHeatJ += spanS * (heatW - passedW);
  state.heatW = passedW * taken;
  state.energyInJ += spanS * (heatW - passedW * (1 - taken));
  return state.heatW;
}
