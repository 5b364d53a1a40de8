import { useCallback, useEffect, useState } from 'react';
import type { About } from '../../classroom/index.ts';
import { askAbout } from './ask-server.ts';

export type AboutNow =
  | { readonly is: 'asking' }
  /** Whoever served the page keeps no classes. */
  | { readonly is: 'no server' }
  | { readonly is: 'here'; readonly about: About };

/** Whether there is a server for classes behind this page. */
export function useAbout(): { readonly now: AboutNow; readonly again: () => void } {
  const [now, setNow] = useState<AboutNow>({ is: 'asking' });
  const [attempt, setAttempt] = useState(0);
  // biome-ignore lint/correctness/useExhaustiveDependencies: each attempt asks again
  useEffect(() => {
    let wanted = true;
    void askAbout().then((asked) => {
      if (wanted) setNow(asked.ok ? { is: 'here', about: asked.value } : { is: 'no server' });
    });
    return () => {
      wanted = false;
    };
  }, [attempt]);
  const again = useCallback(() => setAttempt((count) => count + 1), []);
  return { now, again };
}
