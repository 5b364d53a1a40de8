/** The shipped plants for makers that ask nothing of an atlas. */
import { soundSetup } from '../../../src/cli/sound-setup.ts';
import { planOf } from '../../../src/diagnosis/index.ts';
import type { QuizPlant } from '../../../src/quiz/index.ts';
import { library } from '../../support/library.ts';

export const PLANTS = ['dairy', 'laundry', 'school'] as const;

const made = new Map<string, QuizPlant>();

export function plantWithoutAtlas(id: string): QuizPlant {
  const known = made.get(id);
  if (known !== undefined) return known;
  const sound = soundSetup(library, id);
  if (sound === null) throw new Error(`no sound start of ${id}`);
  const atlas = null as unknown as QuizPlant['atlas'];
  const plant: QuizPlant = { id, sound, plan: planOf(sound), atlas, questions: [] };
  made.set(id, plant);
  return plant;
}
