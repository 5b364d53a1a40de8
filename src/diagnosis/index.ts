export { assembleAtlas, type CauseSamples } from './atlas/assemble.ts';
export type { Atlas, AtlasKey } from './atlas/atlas.ts';
export { type CauseSample, effectOf, SOUND_PRIOR, samplesOf } from './atlas/cause-samples.ts';
export { decodeAtlas, encodeAtlas } from './atlas/encode.ts';
export { type KeyPlaces, keyPlacesOf, observationsOf } from './atlas/observations.ts';
export { type Plan, planOf, scripted } from './atlas/plan.ts';
export { questionCost, questionMinutes, toolFor } from './atlas/question-cost.ts';
export type { Sample } from './atlas/take-sample.ts';
export { withPlant } from './atlas/with-plant.ts';
export { type CaseDiagnosed, diagnoseCase, type PathStep } from './author/diagnose-case.ts';
export { sampleOfCase } from './author/sample-of-case.ts';
export { dialReadings } from './observe/dial-readings.ts';
export { heardReadings, lookReadings, smellReading } from './observe/look-readings.ts';
export { AT_REST, ISOLATED, LOCKED_OUT, momentOf, STANDING } from './observe/moment.ts';
export { durationReading, historyReadings, panelReadings } from './observe/panel-readings.ts';
export { checkName, partsOfCheck, type Reading } from './observe/reading.ts';
export { toolReadings } from './observe/tool-readings.ts';
export {
  continuityReading,
  isLive,
  liveReading,
  voltsReading,
  type WirePlaces,
  wirePlacesOf,
} from './observe/wire-readings.ts';
export { ambiguityGroups } from './reasoning/ambiguity.ts';
export {
  afterSeeing,
  type Belief,
  causeShares,
  priorBelief,
  SURPRISE,
  sharesOf,
} from './reasoning/belief.ts';
export { costMinutes } from './reasoning/cost.ts';
export { entropyBits, gainBits, REDUNDANT_BITS, uncertaintyOf } from './reasoning/gain.ts';
export { greedyQuestion, greedyValue } from './reasoning/greedy.ts';
export { type Optimum, solveCase } from './reasoning/optimum.ts';
export {
  type Cause,
  type Observation,
  type ObservationKey,
  type Particles,
  spansOf,
} from './reasoning/particles.ts';
export { type Question, questionsOf } from './reasoning/questions.ts';
export { type RankedCheck, rankChecks } from './reasoning/rank-checks.ts';
export { type SmallCase, type SmallQuestion, smallCaseOf } from './reasoning/small-case.ts';
export { rankedSuspects, type Suspect, suspectsBy } from './reasoning/suspects.ts';
