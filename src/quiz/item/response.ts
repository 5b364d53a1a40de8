/** What was answered, and whether it is right. Plain data. */
import type { Item, NumberItem } from './item.ts';

export type Response =
  | { readonly is: 'choice'; readonly option: number }
  | { readonly is: 'order'; readonly order: readonly number[] }
  /** SI. */
  | { readonly is: 'number'; readonly value: number };

/** How sure someone said to be before the answer, as a chance in a hundred. */
export const CONFIDENCES = [35, 55, 75, 95] as const;
export type Confidence = (typeof CONFIDENCES)[number];

/** How far from the key a number may be and still be right, SI. */
export function farthestOff({ key, tolerance, toleranceAbs = 0 }: NumberItem): number {
  return Math.max(Math.abs(key) * tolerance, toleranceAbs);
}

/** Whether a response is right; one of another kind than the item asks for is not. */
export function isRight(item: Item, response: Response): boolean {
  switch (item.answer) {
    case 'choice':
    case 'spot':
      return response.is === 'choice' && response.option === item.key;
    case 'order':
      return (
        response.is === 'order' &&
        response.order.length === item.key.length &&
        response.order.every((place, i) => place === item.key[i])
      );
    case 'number':
      return response.is === 'number' && Math.abs(response.value - item.key) <= farthestOff(item);
  }
}
