/** The shipped plants as the quiz takes them, each made once. */
import { fileURLToPath } from 'node:url';
import { atlasFile, atlasFolder, readAtlas } from '../../src/cli/atlas/files.ts';
import { soundSetup } from '../../src/cli/sound-setup.ts';
import { type QuizPlant, quizPlantOf } from '../../src/quiz/index.ts';
import { library } from '../support/library.ts';

const folder = atlasFolder(fileURLToPath(new URL('../..', import.meta.url)));
const plants = new Map<string, QuizPlant>();

export const QUIZ_PLANTS = ['dairy', 'laundry', 'school'] as const;

export function quizPlant(id: string): QuizPlant {
  const known = plants.get(id);
  if (known !== undefined) return known;
  const atlas = readAtlas(atlasFile(folder, id));
  const sound = soundSetup(library, id);
  if (atlas === null || sound === null) throw new Error(`no plant ${id}`);
  const made = quizPlantOf(sound, atlas);
  plants.set(id, made);
  return made;
}
