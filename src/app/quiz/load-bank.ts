import library from 'virtual:library';
import type { ItemCard } from '../../quiz/index.ts';
import { withMoved } from '../../quiz/taking/index.ts';
import { writtenCards } from '../../quiz/written/index.ts';
import { bankSchema } from './bank-schema.ts';

let loading: Promise<readonly ItemCard[]> | null = null;

/**
 * Every item that may be asked, fetched once a visit.
 *
 * @throws where it cannot be fetched or is no list of items; asking again then fetches again
 */
export function loadBank(): Promise<readonly ItemCard[]> {
  loading ??= fetchBank().catch((error: unknown) => {
    loading = null;
    throw error;
  });
  return loading;
}

async function fetchBank(): Promise<readonly ItemCard[]> {
  const response = await fetch('quiz/items.json');
  if (!response.ok) throw new Error(`${response.status}`);
  const { items, moved } = bankSchema.parse(await response.json());
  return withMoved([...items, ...writtenCards(library.quizzes)], moved);
}
