import library from 'virtual:library';

export type Job = (typeof library.jobs)[number];
export type Drill = (typeof library.drills)[number];
export type Lesson = (typeof library.lessons)[number];

export interface PlantExercises {
  readonly plant: string;
  readonly lessons: readonly Lesson[];
  /** Easy ones first. */
  readonly jobs: readonly Job[];
  readonly drills: readonly Drill[];
}

export function exercisesOf(plant: string): PlantExercises {
  return {
    plant,
    lessons: library.lessons.filter((each) => each.plant === plant),
    jobs: library.jobs
      .filter((each) => each.plant === plant)
      .sort((a, b) => a.level - b.level || a.title.localeCompare(b.title)),
    drills: library.drills.filter((each) => each.plant === plant),
  };
}

export function jobOf(id: string): Job | null {
  return library.jobs.find((each) => each.id === id) ?? null;
}

export function drillOf(id: string): Drill | null {
  return library.drills.find((each) => each.id === id) ?? null;
}

export function lessonOf(id: string): Lesson | null {
  return library.lessons.find((each) => each.id === id) ?? null;
}

export function plantTitle(id: string): string {
  return library.plants.find((plant) => plant.id === id)?.title ?? id;
}

/** What a saved piece of work is called; null when the library has it no more. */
export function exerciseTitle(kind: 'job' | 'drill' | 'lesson', id: string): string | null {
  const all = { job: library.jobs, drill: library.drills, lesson: library.lessons };
  return all[kind].find((each) => each.id === id)?.title ?? null;
}

/** Names of the servos that a hand can move. */
export function servosOfPlant(id: string): readonly string[] {
  return (
    library.plants.find((plant) => plant.id === id)?.field.servos.map((servo) => servo.id) ?? []
  );
}
