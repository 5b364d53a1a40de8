import type { ClassWay, ClassWhat } from '../../../machines/class/index.ts';
import type { QuizMode } from '../../quiz/index.ts';
import { composePaper, type PaperChoice } from '../../records/index.ts';
import { askToOpen } from './ask-server.ts';
import { keepOwnClass, type OwnClass } from './own-classes.ts';

export type ClassOpened =
  | { readonly ok: true; readonly own: OwnClass; readonly kept: boolean }
  | { readonly ok: false; readonly error: 'no server' | 'wrong key' | 'refused'; detail: string };

/** Asks the server for a class, and keeps on the device what lets in again. */
export async function openClass(
  what: ClassWhat,
  way: ClassWay,
  retentionDays: number,
): Promise<ClassOpened> {
  const asked = await askToOpen({ what: askable(what), way, retentionDays });
  if (!asked.ok) return asked;
  const own: OwnClass = {
    ...asked.value,
    title: what.title,
    kind: what.kind,
    way,
    openedMs: Date.now(),
  };
  return { ok: true, own, kept: keepOwnClass(own) };
}

type Wish = Parameters<typeof askToOpen>[0];

function askable({ items, ...what }: ClassWhat): Wish['what'] {
  return items === undefined ? what : { ...what, items: [...items] };
}

/** A quiz for everyone; null where there is nothing to ask. */
export function quizForClass(
  choice: PaperChoice,
  cards: Parameters<typeof composePaper>[1],
  mode: QuizMode,
  title: string,
): ClassWhat | null {
  const items = composePaper(choice, cards);
  if (items.length === 0) return null;
  return { kind: 'quiz', id: `quiz ${choice.number}`, title, plant: '', items: [...items], mode };
}
