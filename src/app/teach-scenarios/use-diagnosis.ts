import { useCallback, useEffect, useRef, useState } from 'react';
import { startWorker } from '../quiz-item/start-worker.ts';
import type { AuthorKind } from './author-kinds.ts';
import { type AuthorPort, CLOSED, createAuthorPort } from './author-port.ts';
import type { FileDiagnosed } from './author-protocol.ts';

export type DiagnosisNow =
  | { readonly is: 'none' }
  | { readonly is: 'asking' }
  | { readonly is: 'cancelled' }
  | { readonly is: 'found'; readonly of: string; readonly diagnosed: FileDiagnosed }
  | { readonly is: 'broken'; readonly detail: string };

/** One at a time, each in a worker of its own, so that it can be broken off. */
export function useDiagnosis(kind: AuthorKind) {
  const [now, setNow] = useState<DiagnosisNow>({ is: 'none' });
  const running = useRef<AuthorPort | null>(null);
  const stop = useCallback(() => {
    running.current?.close();
    running.current = null;
  }, []);
  useEffect(() => stop, [stop]);
  const start = useCallback(
    (text: string) => {
      stop();
      const port = createAuthorPort(startWorker);
      running.current = port;
      setNow({ is: 'asking' });
      const atlases = new URL('atlas/', document.baseURI).href;
      port
        .ask({ of: 'diagnose', kind, text, atlases })
        .then(
          (diagnosed): DiagnosisNow => ({ is: 'found', of: text, diagnosed }),
          ({ message }: Error): DiagnosisNow => ({ is: 'broken', detail: message }),
        )
        .then((next) => {
          if (running.current !== port) return;
          running.current = null;
          port.close();
          if (next.is !== 'broken' || next.detail !== CLOSED) setNow(next);
        });
    },
    [kind, stop],
  );
  const cancel = useCallback(() => {
    stop();
    setNow({ is: 'cancelled' });
  }, [stop]);
  return { now, start, cancel };
}
