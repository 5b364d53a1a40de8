import { decodeAtlas } from '../../diagnosis/index.ts';
import { type Item, makeItem, type QuizPlant, quizPlantOf } from '../../quiz/index.ts';
import type { LearnerLibrary } from '../../scenario/index.ts';
import { soundSetup } from '../work/index.ts';

/**
 * Makes items by their ids, each once, as pages do.
 *
 * @param atlasOf text of the atlas of a plant; null where it has none
 * @throws where the text is no atlas
 */
export function itemMaker(
  library: LearnerLibrary,
  atlasOf: (plant: string) => string | null,
): (id: string) => Item | null {
  const plants = new Map<string, QuizPlant | null>();
  const items = new Map<string, Item | null>();

  function plantOf(id: string): QuizPlant | null {
    const known = plants.get(id);
    if (known !== undefined) return known;
    const sound = soundSetup(library, id);
    const text = sound === null ? null : atlasOf(id);
    const plant = sound === null || text === null ? null : quizPlantOf(sound, readAtlas(text));
    plants.set(id, plant);
    return plant;
  }

  return (id) => {
    const known = items.get(id);
    if (known !== undefined) return known;
    const made = makeItem(plantOf, id, library.quizzes);
    const item = made?.ok === true ? made.item : null;
    items.set(id, item);
    return item;
  };
}

function readAtlas(text: string) {
  const atlas = decodeAtlas(text);
  if (atlas === null) throw new Error('not an atlas of this version');
  return atlas;
}
