import { ITEM_KINDS, type ItemKind } from './item.ts';

export interface MadeId {
  readonly kind: ItemKind;
  readonly plant: string;
  readonly seed: number;
}

const MOST_SEED = 0x7fffffff;

export function itemId({ kind, plant, seed }: MadeId): string {
  return `${kind.replaceAll(' ', '-')}/${plant}/${seed}`;
}

/** Null where it names no item that is made from a seed. */
export function readItemId(id: string): MadeId | null {
  const [word = '', plant = '', digits = '', more] = id.split('/');
  const kind = ITEM_KINDS.find((one) => one.replaceAll(' ', '-') === word);
  if (kind === undefined || plant === '' || more !== undefined) return null;
  if (!/^(?:0|[1-9]\d{0,9})$/.test(digits)) return null;
  const seed = Number(digits);
  return seed <= MOST_SEED ? { kind, plant, seed } : null;
}
