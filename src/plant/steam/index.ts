export type { Phase } from './gibbs.ts';
export { liquidWater } from './region-1.ts';
export { steam } from './region-2.ts';
export {
  saturationPressure,
  saturationPressureSlope,
  saturationTemperature,
} from './region-4.ts';
export {
  createSaturation,
  LEAST_SATURATION_K,
  MOST_SATURATION_K,
  readSaturation,
  type Saturation,
} from './saturation.ts';
