import { useEffect, useState } from 'react';
import type { AuthorKind } from './author-kinds.ts';
import { type AuthorPort, CLOSED } from './author-port.ts';
import type { FileChecked } from './author-protocol.ts';

/** Whoever types is not held up by every letter. */
const QUIET_MS = 180;

export interface CheckedNow {
  /** Of the text that is there; null while it is being looked at. */
  readonly checked: FileChecked | null;
  /** What was found last, of this text or of an earlier one. */
  readonly last: FileChecked | null;
  readonly trouble: string | null;
}

/** What is wrong with a text, looked at again after each change. */
export function useChecked(port: AuthorPort, kind: AuthorKind, text: string): CheckedNow {
  const [found, setFound] = useState<{ text: string; checked: FileChecked } | null>(null);
  const [trouble, setTrouble] = useState<string | null>(null);
  useEffect(() => {
    let wanted = true;
    const timer = setTimeout(() => {
      port.ask({ of: 'check', kind, text }).then(
        (checked) => {
          if (!wanted) return;
          setFound({ text, checked });
          setTrouble(null);
        },
        (error: Error) => {
          if (wanted && error.message !== CLOSED) setTrouble(error.message);
        },
      );
    }, QUIET_MS);
    return () => {
      wanted = false;
      clearTimeout(timer);
    };
  }, [port, kind, text]);
  const checked = found !== null && found.text === text ? found.checked : null;
  return { checked, last: found?.checked ?? null, trouble };
}
