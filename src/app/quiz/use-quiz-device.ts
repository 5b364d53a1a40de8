import { useEffect, useMemo, useState } from 'react';
import type { GivenAnswer } from '../../quiz/index.ts';
import { deviceShelf } from '../work/shelf.ts';
import { openQuizNames } from './device-open.ts';
import {
  type AnswersImported,
  type AnswersKept,
  eraseAnswers,
  exportAnswers,
  importAnswers,
  keptAnswers,
} from './keep-answers.ts';

/** Of answers, quizzes under way and the end of a course alike. */
const PREFIX = 'flamewright.quiz';

export interface QuizDevice {
  readonly kept: AnswersKept;
  readonly answers: readonly GivenAnswer[];
  /** Names of the quizzes under way, the latest first. */
  readonly open: readonly string[];
  /** Looks again at what the device has. */
  renew(): void;
  exportText(): string;
  importFile(file: File): Promise<AnswersImported>;
  erase(): void;
}

/** What the device knows of quizzes; looked at anew when another page has added to it. */
export function useQuizDevice(): QuizDevice {
  const [turn, setTurn] = useState(0);
  const renew = () => setTurn((before) => before + 1);
  useEffect(() => {
    const onStorage = ({ key }: StorageEvent): void => {
      if (key === null || key.startsWith(PREFIX)) setTurn((before) => before + 1);
    };
    addEventListener('storage', onStorage);
    return () => removeEventListener('storage', onStorage);
  }, []);
  // biome-ignore lint/correctness/useExhaustiveDependencies: each turn looks again
  const { kept, open } = useMemo(
    () => ({ kept: keptAnswers(deviceShelf), open: openQuizNames() }),
    [turn],
  );
  return {
    kept,
    answers: kept.record.answers,
    open,
    renew,
    exportText: () => exportAnswers(deviceShelf),
    async importFile(file) {
      const imported = importAnswers(deviceShelf, await file.text());
      renew();
      return imported;
    },
    erase() {
      eraseAnswers(deviceShelf, new Date().toISOString());
      renew();
    },
  };
}
