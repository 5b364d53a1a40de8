import { useCallback, useEffect, useRef, useState } from 'react';
import { type AskedResults, askResults, askToJudge, type ResultsOfClass } from './ask-results.ts';

/** While something is still being judged. */
const AGAIN_MS = 2000;

export interface ResultsNow {
  /** Null until the first answer. */
  readonly asked: AskedResults<ResultsOfClass> | null;
  again(): void;
  /** Has the server judge what was never handed in. */
  judge(): void;
}

/** Results of a class, asked for again as long as works wait to be judged. */
export function useResults(id: string): ResultsNow {
  const [asked, setAsked] = useState<ResultsNow['asked']>(null);
  const turn = useRef(0);
  const again = useCallback(() => {
    turn.current += 1;
    const own = turn.current;
    void askResults(id).then((answer) => {
      if (turn.current === own) setAsked(answer);
    });
  }, [id]);
  useEffect(() => {
    again();
    return () => {
      turn.current += 1;
    };
  }, [again]);
  const [judging, setJudging] = useState(false);
  const waiting = asked?.ok === true ? asked.value.waiting : 0;
  /** At the close the server judges by itself. */
  const isClosed = asked?.ok === true && asked.value.line.phase === 'closed';
  useEffect(() => {
    if (waiting === 0) {
      setJudging(false);
      return;
    }
    if (!judging && !isClosed) return;
    const timer = setInterval(again, AGAIN_MS);
    return () => clearInterval(timer);
  }, [judging, isClosed, waiting, again]);
  const judge = useCallback(() => {
    setJudging(true);
    void askToJudge(id).then(again);
  }, [id, again]);
  return { asked, again, judge };
}
