import { useCallback, useEffect, useState } from 'react';
import type { Item } from '../../quiz/index.ts';
import type { ItemTrouble } from '../session/making-protocol.ts';
import { type AskedItem, askForItem, knownItem } from './item-maker.ts';
import { warmUp } from './run-workers.ts';

export type MadeItem =
  | { readonly state: 'making' }
  | { readonly state: 'made'; readonly item: Item }
  | {
      readonly state: 'failed';
      readonly why: ItemTrouble;
      /** Why it was rejected, or an error's own words. */
      readonly detail: string;
      again(): void;
    };

/** An item by its id, made in a worker; null: nothing is asked for yet. */
export function useMadeItem(id: string | null): MadeItem {
  const [attempt, setAttempt] = useState(0);
  const [come, setCome] = useState<{ readonly id: string; readonly asked: AskedItem } | null>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: each attempt asks anew
  useEffect(() => {
    if (id === null || knownItem(id)?.ok === true) return;
    warmUp();
    let wanted = true;
    void askForItem(id).then((asked) => {
      if (wanted) setCome({ id, asked });
    });
    return () => {
      wanted = false;
    };
  }, [id, attempt]);
  const again = useCallback(() => {
    setCome(null);
    setAttempt((count) => count + 1);
  }, []);
  if (id === null) return { state: 'making' };
  const asked = knownItem(id) ?? (come?.id === id ? come.asked : null);
  if (asked === null) return { state: 'making' };
  if (asked.ok) return { state: 'made', item: asked.item };
  return { state: 'failed', why: asked.trouble, detail: asked.detail, again };
}
