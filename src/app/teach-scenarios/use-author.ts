import { useEffect, useMemo, useState } from 'react';
import { startWorker } from '../quiz-item/start-worker.ts';
import { type AuthorPort, CLOSED, createAuthorPort } from './author-port.ts';
import type { AuthorFacts } from './author-protocol.ts';

export interface AuthorNow {
  readonly port: AuthorPort;
  /** Null while they are fetched. */
  readonly facts: AuthorFacts | null;
  /** Why nothing comes; null where something does. */
  readonly trouble: string | null;
  readonly again: () => void;
}

/** The same for as long as the page stands. */
let known: AuthorFacts | null = null;

/** The worker that knows plants and files, for as long as a page of them stands. */
export function useAuthor(): AuthorNow {
  const [facts, setFacts] = useState(known);
  const [trouble, setTrouble] = useState<string | null>(null);
  const [attempt, setAttempt] = useState(0);
  const port = useMemo(() => createAuthorPort(startWorker), []);
  // biome-ignore lint/correctness/useExhaustiveDependencies: each attempt asks again
  useEffect(() => {
    port.ask({ of: 'facts' }).then(
      (found) => {
        known = found;
        setFacts(found);
        setTrouble(null);
      },
      (error: Error) => {
        if (error.message !== CLOSED) setTrouble(error.message);
      },
    );
    return () => port.close();
  }, [port, attempt]);
  return { port, facts, trouble, again: () => setAttempt(attempt + 1) };
}
