export { assembleAtlas, type CauseSamples } from './atlas/assemble.ts';
export type { Atlas, AtlasKey } from './atlas/atlas.ts';
export { NOT_REACHED } from './atlas/band.ts';
export { type CauseSample, effectOf, SOUND_PRIOR, samplesOf } from './atlas/cause-samples.ts';
export { decodeAtlas, encodeAtlas } from './atlas/encode.ts';
export { binsOf, type KeyPlaces, keyPlacesOf, observationsOf } from './atlas/observations.ts';
export { type Plan, planOf, scripted } from './atlas/plan.ts';
export { questionCost, questionMinutes, toolFor } from './atlas/question-cost.ts';
export { withTolerances } from './atlas/spread.ts';
export { keyName, type MomentPassed, type Sample, sampleStart } from './atlas/take-sample.ts';
export { withPlant } from './atlas/with-plant.ts';
export { type CaseDiagnosed, diagnoseCase } from './author/diagnose-case.ts';
export type { CauseFound, PathStep } from './author/find-cause.ts';
export { rankCorrelation } from './author/rank-correlation.ts';
export { sampleOfCase } from './author/sample-of-case.ts';
export { decisionsOf } from './from-run/decisions-of.ts';
export { withoutCircumstances } from './from-run/without-circumstances.ts';
export { type Fared, type FaredOnTheWhole, howFared, onTheWhole } from './learners/fared.ts';
export type { Learner } from './learners/learner.ts';
export { LEARNERS } from './learners/learners.ts';
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
export { afterRepair } from './score/after-repair.ts';
export { type Case, caseOf, caseWith } from './score/case.ts';
export type { Decision, DecisionAct, Seen } from './score/decision.ts';
export { outcomeOf } from './score/outcome.ts';
export { questionsOfStarts, WATCH_A_START } from './score/questions-of-starts.ts';
export { reasonAbout } from './score/reason-about.ts';
export {
  type Advice,
  type BoardLine,
  FOUND_WAYS,
  type FoundWay,
  type JudgedClaim,
  type JudgedDecision,
  type PartShare,
  type Reasoning,
  type Told,
} from './score/reasoning.ts';
