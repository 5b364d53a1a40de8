import { useCallback, useEffect, useRef, useState } from 'react';
import type { ItemCard } from '../../quiz/index.ts';
import {
  composePaper,
  type Paper,
  type PaperChoice,
  type PaperQuestion,
} from '../../records/index.ts';
import { paperWords } from '../../wording/index.ts';
import { settings } from '../settings/settings.ts';
import { makeQuestion } from './make-question.ts';

export type PaperNow =
  | { readonly is: 'none' }
  | { readonly is: 'making'; readonly done: number; readonly of: number }
  | {
      readonly is: 'made';
      readonly paper: Paper;
      /** How many were wanted. */
      readonly wanted: number;
      /** Ids of those that could not be made. */
      readonly leftOut: readonly string[];
    }
  /** What makes questions could not be fetched or broke off. */
  | { readonly is: 'broken' };

/** A paper as it is being made, question by question; one at a time. */
export function usePaper() {
  const [now, setNow] = useState<PaperNow>({ is: 'none' });
  /** Each making has a number; an older one has nothing more to say. */
  const turn = useRef(0);
  const stop = useCallback(() => {
    turn.current += 1;
    setNow({ is: 'none' });
  }, []);
  useEffect(() => {
    return () => {
      turn.current += 1;
    };
  }, []);
  const make = useCallback((choice: PaperChoice, cards: readonly ItemCard[]) => {
    turn.current += 1;
    const own = turn.current;
    const tell = (next: PaperNow) => {
      if (turn.current === own) setNow(next);
    };
    tell({ is: 'making', done: 0, of: choice.count });
    makePaper(choice, cards, () => turn.current === own, tell).catch(() => tell({ is: 'broken' }));
  }, []);
  return { now, make, stop };
}

async function makePaper(
  choice: PaperChoice,
  cards: readonly ItemCard[],
  isWanted: () => boolean,
  tell: (now: PaperNow) => void,
): Promise<void> {
  const { units } = settings.read();
  const ids = composePaper(choice, cards);
  const questions: PaperQuestion[] = [];
  const leftOut: string[] = [];
  for (const id of ids) {
    if (!isWanted()) return;
    tell({ is: 'making', done: questions.length + leftOut.length, of: ids.length });
    const question = await makeQuestion(id, units);
    if (question === null) leftOut.push(id);
    else questions.push(question);
  }
  const paper = { number: choice.number, questions, words: paperWords() };
  tell({ is: 'made', paper, wanted: choice.count, leftOut });
}
