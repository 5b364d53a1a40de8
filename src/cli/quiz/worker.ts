/** One core of `flamewright items`: looks for the items of one kind at one plant after the other. */
import { parentPort, workerData } from 'node:worker_threads';
import type { RunSetup } from '../../engine/index.ts';
import { en } from '../../i18n/en/index.ts';
import { addMessages } from '../../i18n/index.ts';
import {
  type Gathered,
  gather,
  type ItemKind,
  MAKERS,
  type QuizPlant,
  quizPlantOf,
  type Wanted,
} from '../../quiz/index.ts';
import { readAtlas } from '../atlas/files.ts';
import { lintOf } from './lint-of.ts';

export interface ItemsTask {
  readonly kind: ItemKind;
  readonly plant: string;
  readonly wanted: Wanted;
}
export interface ItemsData {
  readonly setups: Readonly<Record<string, RunSetup>>;
  /** File of the atlas of each plant. */
  readonly atlases: Readonly<Record<string, string>>;
}

addMessages(en);
const { setups, atlases } = workerData as ItemsData;
const plants = new Map<string, QuizPlant>();

parentPort?.on('message', ({ kind, plant: id, wanted }: ItemsTask) => {
  const plant = plantFor(id);
  parentPort?.postMessage(gather(MAKERS[kind], plant, wanted, lintOf(plant)) satisfies Gathered);
});

function plantFor(id: string): QuizPlant {
  const known = plants.get(id);
  if (known !== undefined) return known;
  const sound = setups[id];
  const atlas = readAtlas(atlases[id] ?? '');
  if (sound === undefined || atlas === null) throw new Error(`no plant or atlas ${id}`);
  const plant = quizPlantOf(sound, atlas);
  plants.set(id, plant);
  return plant;
}
