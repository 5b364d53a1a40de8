export { readBalance, type VesselBalance } from './read-balance.ts';
export { type RiserSteam, type RiserStores, readRiserSteam, riserStores } from './riser.ts';
export {
  createVessel,
  prepareVessel,
  settleVessel,
  showVessel,
  stepVessel,
  type VesselStart,
} from './vessel.ts';
export {
  type FireTubeParameters,
  type HotWaterParameters,
  type SteamParameters,
  type VesselKind,
  type VesselParameters,
  type VesselParametersOf,
  vesselTables,
  type WaterTubeParameters,
} from './vessel-parameters.ts';
export type { VesselFeed, VesselState } from './vessel-state.ts';
