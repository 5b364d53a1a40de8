import { useEffect, useRef } from 'react';
import { STATE_EVERY_MS } from '../../classroom/index.ts';
import { useClass } from './class-context.ts';
import type { OwnState } from './state-of-quiz.ts';

/** Tells the board once a second how it stands here. */
export function useTellState(stateNow: () => OwnState): void {
  const { client, book } = useClass();
  const latest = useRef(stateNow);
  latest.current = stateNow;
  useEffect(() => {
    const tell = (): void => {
      const { asksHelp } = book.read();
      client.tellState({ ...latest.current(), asksHelp });
    };
    tell();
    const timer = setInterval(tell, STATE_EVERY_MS);
    const stop = book.subscribe(tell);
    return () => {
      clearInterval(timer);
      stop();
    };
  }, [client, book]);
}
