import { useCallback, useEffect, useRef, useState } from 'react';
import { loadMessages, say } from '../../i18n/index.ts';
import type { QuizRecord } from '../../records/answers/index.ts';
import { ITEM_MESSAGE_PARTS } from '../quiz-item/item-message-parts.ts';
import { settings } from '../settings/settings.ts';
import { saveFile } from '../teach-paper/save-file.ts';

export type ResultFormat = 'csv' | 'xapi';

export interface Wording {
  readonly done: number;
  readonly of: number;
}

interface ResultExport {
  /** While the questions are put into words; null otherwise. */
  readonly wording: Wording | null;
  begin(format: ResultFormat, record: QuizRecord): void;
  /** Goes on to the file with the words that are there. */
  enough(): void;
}

/** Answers as a table or as statements, with their questions in words. */
export function useResultExport(onSaid: (said: string) => void): ResultExport {
  const [wording, setWording] = useState<Wording | null>(null);
  /** Whether more words are wanted, and whether anyone still waits for the file. */
  const state = useRef({ more: true, here: true });
  useEffect(() => {
    state.current.here = true;
    return () => {
      state.current.here = false;
    };
  }, []);
  const begin = useCallback(
    (format: ResultFormat, record: QuizRecord) => {
      state.current.more = true;
      onSaid('');
      setWording({ done: 0, of: 0 });
      saveResults(format, record, (done, of) => {
        if (state.current.here) setWording({ done, of });
        return state.current.more && state.current.here;
      })
        .then((bare) => state.current.here && onSaid(savedWords(bare)))
        .catch(() => state.current.here && onSaid(say('quiz.export.failed')))
        .finally(() => state.current.here && setWording(null));
    },
    [onSaid],
  );
  const enough = useCallback(() => {
    state.current.more = false;
  }, []);
  return { wording, begin, enough };
}

/** @returns how many questions stand in the file by their ids alone */
async function saveResults(
  format: ResultFormat,
  { answers, quizzes }: QuizRecord,
  onDone: (done: number, of: number) => boolean,
): Promise<number> {
  // What writes the formats is fetched when one is wanted.
  const [records, { resultWords, xapiWords }, { wordAnswered }] = await Promise.all([
    import('../../records/index.ts'),
    import('../../wording/index.ts'),
    import('./word-answered.ts'),
    loadMessages([...ITEM_MESSAGE_PARTS, 'quiz-paper']),
  ]);
  const { units } = settings.read();
  const { items, bare } = await wordAnswered(answers, units, onDone);
  if (format === 'csv') {
    saveFile(records.resultsCsv(answers, resultWords(items, units)));
  } else {
    const finished = quizzes.map(({ startedISO }) => startedISO);
    const chosen = { ...records.XAPI_DEFAULTS, finished };
    saveFile(records.resultsXapi(answers, chosen, items, xapiWords()));
  }
  return bare;
}

function savedWords(bare: number): string {
  if (bare === 0) return say('quiz.export.worded');
  return bare === 1 ? say('quiz.export.bare-one') : say('quiz.export.bare', { count: bare });
}
