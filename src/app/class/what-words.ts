import library from 'virtual:library';
import type { ClassWhat } from '../../../machines/class/index.ts';
import { say } from '../../i18n/index.ts';

/** What is worked on, in words that do not say what is wrong: the title of a start may. */
export function titleOfClass({ kind, title }: ClassWhat): string {
  return kind === 'start' ? say('class.what.start') : title;
}

/** Null for a quiz over several plants. */
export function plantOfClass({ plant }: ClassWhat): { title: string; description: string } | null {
  return library.plants.find(({ id }) => id === plant) ?? null;
}
