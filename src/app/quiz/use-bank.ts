import { useEffect, useState } from 'react';
import type { ItemCard } from '../../quiz/index.ts';
import { loadBank } from './load-bank.ts';

export type BankNow =
  | { readonly state: 'loading' }
  | { readonly state: 'loaded'; readonly cards: readonly ItemCard[] }
  | { readonly state: 'failed'; again(): void };

/** All there is to ask, once it is fetched. */
export function useBank(): BankNow {
  const [bank, setBank] = useState<readonly ItemCard[] | 'failed' | null>(null);
  const [attempt, setAttempt] = useState(0);
  // biome-ignore lint/correctness/useExhaustiveDependencies: each attempt fetches again
  useEffect(() => {
    let wanted = true;
    setBank(null);
    loadBank().then(
      (cards) => wanted && setBank(cards),
      () => wanted && setBank('failed'),
    );
    return () => {
      wanted = false;
    };
  }, [attempt]);
  if (bank === null) return { state: 'loading' };
  if (bank === 'failed') {
    return { state: 'failed', again: () => setAttempt((before) => before + 1) };
  }
  return { state: 'loaded', cards: bank };
}
