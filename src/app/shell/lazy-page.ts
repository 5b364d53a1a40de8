import { type ComponentType, lazy } from 'react';
import { loadMessages, type MessagePart } from '../../i18n/index.ts';

/** What needs the plants, and what needs the drawing, is fetched when it is wanted, with its words. */
export const RUN_WORDS = ['app', 'sequence', 'view'] as const;
export const WORK_WORDS = [
  ...RUN_WORDS,
  'bench',
  'close-up',
  'conduct',
  'debrief',
  'debrief-branch',
  'debrief-way',
  'guidance',
  'job',
  'ladder',
  'learner',
] as const;

/** A page with its words. */
export function lazyPage<Props extends object>(
  words: readonly MessagePart[],
  load: () => Promise<ComponentType<Props>>,
) {
  return lazy(async () => {
    const [page] = await Promise.all([load(), loadMessages(words)]);
    return { default: page };
  });
}
