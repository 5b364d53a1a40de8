import { useCallback, useEffect, useState } from 'react';
import { askAbout } from '../teach-class/ask-server.ts';
import { readInstructorKey } from '../teach-class/instructor-key.ts';
import type { AuthorKind } from './author-kinds.ts';
import { listServer, readServer, type ServerFile, type ServerVersion } from './server-library.ts';

interface Away {
  readonly is: 'asking' | 'no server';
}
interface Locked {
  readonly is: 'key needed';
  /** One was given and not taken. */
  readonly wrong: boolean;
}

export type ServerFileNow =
  | Away
  | Locked
  | { readonly is: 'here'; readonly versions: readonly ServerVersion[] };
export type ServerListNow =
  | Away
  | Locked
  | { readonly is: 'here'; readonly files: readonly ServerFile[] };

/** The versions of a file on the server. */
export function useServerFile(kind: AuthorKind, id: string) {
  const [now, setNow] = useState<ServerFileNow>({ is: 'asking' });
  const { list, again } = useServerList();
  useEffect(() => {
    let wanted = true;
    if (list.is !== 'here') {
      setNow(list);
      return;
    }
    const listed = list.files.find((each) => each.kind === kind && each.id === id);
    if (listed === undefined) {
      setNow({ is: 'here', versions: [] });
      return;
    }
    // Of one that was taken out the last version before that still has its text.
    const version = listed.removed ? listed.version - 1 : listed.version;
    void readServer(kind, id, Math.max(1, version)).then((answer) => {
      if (wanted) setNow({ is: 'here', versions: answer.ok ? answer.value.versions : [] });
    });
    return () => {
      wanted = false;
    };
  }, [list, kind, id]);
  return { now, again };
}

/** All files of the server's library, where there is one. */
export function useServerList() {
  const [list, setList] = useState<ServerListNow>({ is: 'asking' });
  const [attempt, setAttempt] = useState(0);
  // biome-ignore lint/correctness/useExhaustiveDependencies: each attempt asks again
  useEffect(() => {
    let wanted = true;
    void askList().then((found) => {
      if (wanted) setList(found);
    });
    return () => {
      wanted = false;
    };
  }, [attempt]);
  const again = useCallback(() => setAttempt((count) => count + 1), []);
  return { list, again };
}

/** Whether one may is asked first: what is refused would stand in the browser's own log as a failure. */
async function askList(): Promise<ServerListNow> {
  const about = await askAbout();
  if (!about.ok) return { is: 'no server' };
  const locked: Locked = { is: 'key needed', wrong: readInstructorKey() !== '' };
  if (!about.value.mayOpen) return locked;
  const answer = await listServer();
  if (answer.ok) return { is: 'here', files: answer.value.files };
  return answer.error === 'key needed' ? locked : { is: 'no server' };
}
