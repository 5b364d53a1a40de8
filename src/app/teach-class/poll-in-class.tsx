import { useStorePart } from '../session/store.ts';
import { PollPanel } from '../teach-poll/poll-panel.tsx';
import { momentOfRun } from './moment-of-run.ts';
import { useBook, useRows, useTeach } from './teach-context.ts';

/** One question to everyone, made from the run in the middle of the page where there is one. */
export function PollInClass() {
  const { client, own, session, viewed } = useTeach();
  const book = useBook();
  const counts = useStorePart(client.store, (now) => now.counts);
  const here = useRows().filter((row) => row.here).length;
  return (
    <PollPanel
      poll={book.poll}
      counts={counts}
      here={here}
      say={(entry) => client.say(entry)}
      moment={() => {
        const run = own.way === 'together' ? session : viewed.read().session;
        return run === null ? null : momentOfRun(run, book);
      }}
    />
  );
}
