import { AIR_OXYGEN } from '../combustion/index.ts';
import { TUBE_GASES, TUBE_PLACES } from './analyser-state.ts';
import { monoxideLoss, stackLoss } from './efficiency.ts';
import type { FurnaceState } from './furnace-state.ts';

/** So little burnt gas that there is no fire. */
const NO_FIRE_OXYGEN = 0.19;

/**
 * What an analyser with its probe in the flue shows.
 *
 * Equation: the sample, thinned by false air, comes to the cells after the delay (plug flow); each
 *   cell follows with one time constant. Efficiency = 1 − stack loss − CO loss − shell loss, over the
 *   lower heating value; over the higher one times their ratio.
 * Valid for: steps of one length, from 0.1 s on.
 * Left out: drift and cross-sensitivity of cells, loss of oxidised gases in the condensate.
 * Source: dead time and lag of extractive sampling, as EN 15259 and EN 50379 describe it.
 */
export function stepAnalyser(furnace: FurnaceState, stepS: number): void {
  const { analyser: state, fuel } = furnace;
  const { parameters: p, tube, sample } = state;
  state.head = state.head + 1 < TUBE_PLACES ? state.head + 1 : 0;
  const inlet = TUBE_GASES * state.head;
  const pure = 1 - p.probeFalseAir;
  tube[inlet] = pure * furnace.flueOxygen + p.probeFalseAir * AIR_OXYGEN;
  tube[inlet + 1] = pure * furnace.flueCarbonDioxide;
  tube[inlet + 2] = pure * furnace.flueCarbonMonoxide;
  tube[inlet + 3] = pure * furnace.flueNitricOxide;
  const ago = Math.min(TUBE_PLACES - 1, Math.floor(p.probeDelayS / stepS + 0.5));
  const place = state.head - ago;
  const outlet = TUBE_GASES * (place < 0 ? place + TUBE_PLACES : place);
  const quick = stepS / (p.oxygenCellS + stepS);
  const slow = stepS / (p.traceCellS + stepS);
  state.oxygen += quick * ((tube[outlet] as number) - state.oxygen);
  state.carbonDioxide += slow * ((tube[outlet + 1] as number) - state.carbonDioxide);
  state.carbonMonoxide += slow * ((tube[outlet + 2] as number) - state.carbonMonoxide);
  state.nitricOxide += slow * ((tube[outlet + 3] as number) - state.nitricOxide);
  if (state.temperatureK === 0) state.temperatureK = furnace.flueTemperatureK;
  const warming = stepS / (p.thermocoupleS + stepS);
  state.temperatureK += warming * (furnace.flueTemperatureK - state.temperatureK);

  if (state.oxygen > NO_FIRE_OXYGEN) {
    state.efficiencyNet = 0;
    state.efficiencyGross = 0;
    return;
  }
  sample.oxygen = state.oxygen;
  sample.carbonMonoxide = state.carbonMonoxide;
  sample.temperatureK = state.temperatureK;
  sample.intakeK = furnace.ambient.temperatureK;
  const stack = stackLoss(sample, fuel, furnace.tables);
  state.efficiencyNet = 1 - stack - monoxideLoss(sample, fuel) - p.shellLossShare;
  state.efficiencyGross = (state.efficiencyNet * fuel.lowerHeatingJKg) / fuel.higherHeatingJKg;
}
