export { airShareOf } from './carry-air.ts';
export { createGasTrain } from './create.ts';
export {
  cockParameters,
  controlParameters,
  type GasEdgeKind,
  type GasEdgeParameters,
  gasEdgeTables,
  orificeParameters,
  regulatorParameters,
  shutoffParameters,
  strainerParameters,
} from './edge-parameters.ts';
export {
  describeMixture,
  type MixtureParameters,
  type MixtureProperties,
  mixtureParameters,
} from './mixture.ts';
export { conductanceOf, type NozzleCurve, nozzleFlow, prepareNozzle } from './nozzle.ts';
export { energise, prepareGasTrain, setBlade } from './prepare.ts';
export { leakAreaForFlow, SEAT_LEAK_TEST_PA, SOUND_SEAT_LEAK_DM3_H } from './seat-leak.ts';
export { stepGasTrain } from './step.ts';
export {
  checkGasTrain,
  type GasNodeParameters,
  type GasSupplyParameters,
  type GasTrainIssue,
  type GasTrainParameters,
  gasNodeParameters,
  gasSupplyParameters,
  gasTrainNumbers,
} from './train-parameters.ts';
export { escapeKgS, findEdge, findNode, type GasTrain, gasContentsKg } from './train-state.ts';
