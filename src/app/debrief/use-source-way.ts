import { useEffect, useState } from 'react';
import { foldDesk } from '../../../machines/job/index.ts';
import { openWorkSession } from '../job/use-work-session.ts';
import type { Job } from '../library/exercises.ts';
import type { Session } from '../session/session-types.ts';
import type { WorkRecord } from '../work/work-record.ts';
import { lastClaimS, type Way } from './compare.ts';

/** The work that a branch comes from, run once more and judged; null while it is, 'failed' when that broke off. */
export function useSourceWay(job: Job, source: WorkRecord | null): Way | 'failed' | null {
  const [way, setWay] = useState<Way | 'failed' | null>(null);
  useEffect(() => {
    if (source === null) return;
    let wanted = true;
    const session = openWorkSession({
      kind: source.kind,
      id: source.id,
      log: [...source.log],
      pending: [...source.pending],
      untilS: source.headS,
      setupHash: source.setupHash,
      play: false,
    });
    const opened = whenOpen(session);
    void (async () => {
      try {
        await opened.promise;
        const { entries, claims } = foldDesk('job', { tools: job.tools }, source.desk);
        const verdict = await session.judge(entries);
        const { reasoning } = await session.reason(entries);
        if (wanted) setWay({ verdict, reasoning, claimedAtS: lastClaimS(claims) });
      } catch {
        if (wanted) setWay('failed');
      }
    })();
    return () => {
      wanted = false;
      opened.stop();
      session.close();
    };
  }, [job, source]);
  return way;
}

function whenOpen({ store }: Session) {
  let stop = (): void => undefined;
  const promise = new Promise<void>((resolve, reject) => {
    const look = (): void => {
      const { phase } = store.read();
      if (phase === 'open') resolve();
      if (phase === 'failed') reject(new Error('did not open'));
    };
    stop = store.subscribe(look);
    look();
  });
  return { promise, stop: () => stop() };
}
