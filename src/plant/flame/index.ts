export {
  burningVelocityShare,
  burningVelocityTable,
  readBurningVelocity,
} from './burning-velocity.ts';
export { type FlameFeed, NO_GAS_KGS, stepFlame } from './flame.ts';
export {
  createFlame,
  type FlameParameters,
  type FlameState,
  flameParameters,
  prepareFlame,
} from './flame-state.ts';
export { gapTransfer, type IgnitionParameters, ignitionParameters, jumpShare } from './spark.ts';
