import { createRun } from '../../engine/index.ts';
import {
  findWritten,
  type Item,
  makeItem,
  type QuizPlant,
  quizPlantOf,
  readItemId,
  setupOfRun,
} from '../../quiz/index.ts';
import type { PaperQuestion } from '../../records/index.ts';
import type { Library } from '../../scenario/index.ts';
import { type Names, namesOfPlant, paperQuestion, startWords } from '../../wording/index.ts';
import { atlasFile, readAtlas } from '../atlas/files.ts';
import { soundSetup } from '../sound-setup.ts';

const UNITS = 'SI';
const NO_NAMES: Names = { testPoints: [], inputs: [], channels: [] };

interface Plant {
  readonly quiz: QuizPlant;
  readonly names: Names;
}

export type PaperQuestions =
  | {
      readonly ok: true;
      readonly questions: readonly PaperQuestion[];
      /** Ids of those that this version does not make. */
      readonly leftOut: readonly string[];
    }
  | { readonly ok: false; readonly plantWithoutAtlas: string };

/**
 * Questions by their ids, each made and proved anew.
 *
 * @param folder of the atlases
 * @param onProgress how many are done
 */
export function paperQuestions(
  library: Library,
  folder: string,
  ids: readonly string[],
  onProgress: (done: number) => void,
): PaperQuestions {
  const plants = new Map<string, Plant | null>();
  const plantOf = (id: string): Plant | null => {
    const known = plants.get(id);
    if (known !== undefined) return known;
    const plant = plantFrom(library, folder, id);
    plants.set(id, plant);
    return plant;
  };
  const questions: PaperQuestion[] = [];
  const leftOut: string[] = [];
  for (const [i, id] of ids.entries()) {
    const needed = readItemId(id)?.plant ?? findWritten(library.quizzes, id)?.item.plant;
    if (needed !== undefined && plantOf(needed) === null) {
      return { ok: false, plantWithoutAtlas: needed };
    }
    const made = makeItem((plant) => plantOf(plant)?.quiz ?? null, id, library.quizzes);
    if (made?.ok === true) questions.push(questionOf(made.item, plantOf(made.item.plant)));
    else leftOut.push(id);
    onProgress(i + 1);
  }
  return { ok: true, questions, leftOut };
}

function plantFrom(library: Library, folder: string, id: string): Plant | null {
  const sound = soundSetup(library, id);
  const atlas = readAtlas(atlasFile(folder, id));
  if (sound === null || atlas === null) return null;
  const { channels } = createRun(sound, { keep: 'hash only' });
  return { quiz: quizPlantOf(sound, atlas), names: namesOfPlant(sound.plant, channels) };
}

function questionOf(item: Item, plant: Plant | null): PaperQuestion {
  if (plant === null) return paperQuestion(item, NO_NAMES, UNITS, []);
  return paperQuestion(item, plant.names, UNITS, startOf(item, plant.quiz));
}

function startOf({ run }: Item, { plan }: QuizPlant): readonly string[] {
  if (run === null) return [];
  const started = createRun(setupOfRun(plan, run));
  started.advanceTo(run.untilS);
  return startWords(started.events());
}
