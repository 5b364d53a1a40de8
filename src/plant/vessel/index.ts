export { createSaturation, readSaturation, type Saturation } from './saturation.ts';
export {
  chillVessel,
  createVessel,
  prepareVessel,
  settleVessel,
  stepDrum,
  stepVessel,
  type VesselParameters,
  type VesselState,
  vesselParameters,
} from './vessel.ts';
