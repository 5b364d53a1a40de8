export { type AnswerCause, answerOfDrill, answerOfJob, type ExerciseAnswer } from './answer.ts';
export { MAX_FILE_CHARACTERS, MAX_RUN_S, MAX_SEED } from './bounds.ts';
export { causePartsOf, causesOf } from './causes.ts';
export { checkExpectation } from './check-expectation.ts';
export type { Drill } from './drill-schema.ts';
export { kindOfText } from './file-kind.ts';
export { type FirstStart, firstStartOf } from './first-start.ts';
export { type GivenRead, readGiven } from './given-schema.ts';
export { type Checked, ISSUE_CODES, type Issue, phraseOfIssue } from './issue.ts';
export { issueInFile } from './issue-in-file.ts';
export type { Job } from './job-schema.ts';
export {
  EXERCISE_KINDS,
  type ExerciseKind,
  type ExerciseSetup,
  jobSetup,
} from './job-setup.ts';
export { jsonSchemas } from './json-schemas.ts';
export {
  cardOf,
  type JobCard,
  jobCardOf,
  type LearnerDrill,
  type LearnerJob,
  type LearnerLibrary,
  type LearnerScenario,
  learnerPart,
  type ScenarioCard,
} from './learner-part.ts';
export type { Lesson, LessonStep } from './lesson-schema.ts';
export {
  buildLibrary,
  EMPTY_LIBRARY,
  type Library,
  type LibraryFile,
  readActionLog,
} from './library.ts';
export { nearest } from './nearest.ts';
export { NOTHING_TO_ADD, type Phrase, phrase } from './phrase.ts';
export { type QuizFile, WRITTEN_KINDS, type WrittenItem } from './quiz-schema.ts';
export { readYaml } from './read-yaml.ts';
export type { Scenario } from './scenario-schema.ts';
export { schemaFromTable } from './schema-from-table.ts';
export { type RunChoices, setupOf } from './setup-of.ts';
export type { Expectation } from './start-pieces.ts';
