/** Any item by its id: made from a seed, or written. */
import { type Atlas, planOf, questionsOfStarts } from '../diagnosis/index.ts';
import type { RunSetup } from '../engine/index.ts';
import type { QuizFile, WrittenItem } from '../scenario/index.ts';
import { readItemId } from './item/item-id.ts';
import { type Made, type QuizPlant, REJECTIONS } from './item/maker.ts';
import { MAKERS } from './kinds/makers.ts';
import { findWritten } from './written/written-cards.ts';
import { writtenItem } from './written/written-item.ts';

/** @param sound a setup whose start, with nothing wrong, comes into service */
export function quizPlantOf(sound: RunSetup, atlas: Atlas): QuizPlant {
  return {
    id: sound.plant.id,
    sound,
    plan: planOf(sound),
    atlas,
    questions: questionsOfStarts(atlas),
  };
}

/**
 * @param plants by id; null where there is no such plant
 * @param quizzes files of written items
 * @returns null where the id names no kind, a plant that is not there, or a written item that is gone
 */
export function makeItem(
  plants: (id: string) => QuizPlant | null,
  id: string,
  quizzes: readonly QuizFile[] = [],
): Made | null {
  const written = findWritten(quizzes, id);
  if (written !== null) return makeWritten(plants, written.file, written.item);
  const named = readItemId(id);
  const plant = named === null ? null : plants(named.plant);
  if (named === null || plant === null) return null;
  return MAKERS[named.kind].make(plant, named.seed);
}

function makeWritten(
  plants: (id: string) => QuizPlant | null,
  file: QuizFile,
  item: WrittenItem,
): Made | null {
  const plant = item.plant === undefined ? null : plants(item.plant);
  if (item.plant !== undefined && plant === null) return null;
  const made = writtenItem(file, item, plant);
  if (made.ok) return made;
  const [first] = made.troubles;
  const why = REJECTIONS.find((one) => one === first?.trouble) ?? 'key not proved';
  return { ok: false, why };
}
