import type { PlantFile } from '../engine/index.ts';

/** Names of the cocks that a hand can turn. */
export function cocksOf(plant: PlantFile): string[] {
  return plant.gasTrain.edges.filter(({ kind }) => kind === 'cock').map(({ id }) => id);
}
