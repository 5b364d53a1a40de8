// By itself: a page that keeps results does not judge the work they are of.
export { type ExerciseResult, exerciseResultSchema } from './exercise-result.ts';
export {
  resultOfDrill,
  resultOfJob,
  resultOfLesson,
  rightOfDrill,
  SKILLS_OF_LESSON,
} from './result-of-exercise.ts';
