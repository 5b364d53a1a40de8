import {
  difficultyOfLevel,
  type Exercise,
  usualDifficulty,
} from '../../diagnosis/mastery/index.ts';
import { SKILLS_OF_LESSON } from '../../judging/results/index.ts';
import { exercisesOf } from '../library/exercises.ts';
import { startsByPlant } from '../library/starts.ts';

/** Everything that can be practised, plant by plant in the order of the page, easy jobs first. */
export function exercisesToSuggest(): readonly Exercise[] {
  return startsByPlant().flatMap(({ plant }) => {
    const { lessons, jobs, drills } = exercisesOf(plant);
    return [
      ...lessons.map(
        ({ id }): Exercise => ({
          kind: 'lesson',
          id,
          skills: SKILLS_OF_LESSON,
          difficulty: usualDifficulty('lesson'),
        }),
      ),
      ...jobs.map(
        ({ id, skills, level }): Exercise => ({
          kind: 'job',
          id,
          skills,
          difficulty: difficultyOfLevel(level),
        }),
      ),
      ...drills.map(
        ({ id, skill }): Exercise => ({
          kind: 'drill',
          id,
          skills: [skill],
          difficulty: usualDifficulty('drill'),
        }),
      ),
    ];
  });
}
