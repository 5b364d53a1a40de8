import {
  type Drill,
  drillOf,
  type Job,
  jobOf,
  type Lesson,
  lessonOf,
} from '../library/exercises.ts';
import { useWorkPlace } from './work-place.ts';

/** The exercise as it is given here: an instructor's own stands before a shipped one. */
export function useJobOf(id: string): Job | null {
  return useWorkPlace().given.jobs?.find((each) => each.id === id) ?? jobOf(id);
}

export function useDrillOf(id: string): Drill | null {
  return useWorkPlace().given.drills?.find((each) => each.id === id) ?? drillOf(id);
}

export function useLessonOf(id: string): Lesson | null {
  return useWorkPlace().given.lessons?.find((each) => each.id === id) ?? lessonOf(id);
}
