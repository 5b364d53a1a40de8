/** What the desk must know of each kind of exercise; page and judge go by the same. */
import type { DeskPlan } from '../../../machines/job/index.ts';
import type { LearnerDrill, LearnerJob, Lesson } from '../../scenario/index.ts';

export function planOfJob({ tools }: Pick<LearnerJob, 'tools'>): DeskPlan {
  return { tools };
}

export function planOfDrill({
  tools,
  limitS,
  options,
}: Pick<LearnerDrill, 'tools' | 'limitS' | 'options'>): DeskPlan {
  return { tools, limitS, ...(options === undefined ? {} : { options: options.length }) };
}

/** Where nothing is asked, the one answer is to go on. */
export function planOfLesson({ steps }: Pick<Lesson, 'steps'>): DeskPlan {
  return {
    steps: steps.map(({ step, ask, tryBreaking }) => ({
      step,
      options: ask?.options.length ?? 1,
      mayBreak: tryBreaking !== undefined,
    })),
  };
}
