import { useEffect, useMemo, useState } from 'react';
import {
  foldQuiz,
  type QuizEvent,
  type QuizRefusal,
  type QuizState,
  takeQuizEntry,
} from '../../../machines/quiz/index.ts';
import { keyOnShelf } from '../work/shelf.ts';
import { useWorkPlace } from '../work/work-place.ts';
import { keepOpenQuiz, openQuiz } from './device-open.ts';
import type { KeepTrouble } from './keep-answers.ts';
import { type Draft, OPEN_PREFIX, type OpenQuiz } from './open-quiz.ts';

export interface OpenQuizNow {
  readonly open: OpenQuiz;
  readonly state: QuizState;
  /** Why what was done last is not kept; null when it is. */
  readonly trouble: KeepTrouble | null;
  /** @returns the quiz after it, or why it was not taken */
  take(event: QuizEvent): QuizState | QuizRefusal;
  choose(draft: Draft): void;
}

/**
 * A quiz under way. Each entry is put to what the device has by then, so that two pages with the same
 * quiz go on with one another's. Null where there is none of this name.
 */
export function useOpenQuiz(name: string): OpenQuizNow | null {
  const { shelf } = useWorkPlace();
  const [open, setOpen] = useState(() => openQuiz(name, shelf));
  const [trouble, setTrouble] = useState<KeepTrouble | null>(null);
  useEffect(() => {
    const renew = (event: StorageEvent): void => {
      const key = keyOnShelf(event);
      if (key === null || key === OPEN_PREFIX + name) setOpen(openQuiz(name, shelf));
    };
    addEventListener('storage', renew);
    return () => removeEventListener('storage', renew);
  }, [name, shelf]);
  const state = useMemo(() => (open === null ? null : foldQuiz(open.entries)), [open]);
  if (open === null || state === null) return null;
  const keep = (next: OpenQuiz): void => {
    setTrouble(keepOpenQuiz(next, shelf));
    setOpen(next);
  };
  return {
    open,
    state,
    trouble,
    take(event) {
      const now = openQuiz(name, shelf) ?? open;
      const taken = takeQuizEntry(foldQuiz(now.entries), {
        ...event,
        atISO: new Date().toISOString(),
      });
      if (!taken.ok) {
        setOpen(now);
        return taken.refusal;
      }
      const drafts =
        event.type === 'answer'
          ? now.drafts.filter(({ place }) => place !== event.place)
          : now.drafts;
      keep({ ...now, entries: taken.state.entries, drafts });
      return taken.state;
    },
    choose(draft) {
      const now = openQuiz(name, shelf) ?? open;
      const others = now.drafts.filter(({ place }) => place !== draft.place);
      keep({ ...now, drafts: [...others, draft] });
    },
  };
}
