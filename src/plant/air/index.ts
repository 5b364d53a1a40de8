export {
  type AirPathParameters,
  type AirPathState,
  type AirSurroundings,
  createAirPath,
  prepareAirPath,
  stepAirPath,
} from './air-path.ts';
export {
  AIR_MOLAR_MASS,
  type AmbientParameters,
  type AmbientState,
  ambientParameters,
  createAmbient,
  GAS_CONSTANT,
  gasDensity,
  prepareAmbient,
} from './ambient.ts';
export {
  type DamperParameters,
  damperFlowTable,
  damperParameters,
  discLoss,
  opposedBladeLoss,
  readDamperFlow,
} from './damper.ts';
export {
  type FanParameters,
  fanParameters,
  fanPressureShare,
  fanTorqueShare,
} from './fan.ts';
export { type PassageParameters, passageParameters } from './passages.ts';
export { type StackParameters, stackDraught, stackParameters } from './stack.ts';
