import { say } from '../../i18n/index.ts';
import { useStorePart } from '../session/store.ts';
import { entryText } from './entry-text.ts';
import { useTeach } from './teach-context.ts';

/** What was said in this class, the latest first. */
export function LogPanel() {
  const { client } = useTeach();
  const entries = useStorePart(client.store, (now) => now.entries);
  const unsaid = useStorePart(client.store, (now) => now.unsaid);
  return (
    <>
      {unsaid.length === 0 ? null : (
        <p className="quiet" role="status">
          {say('teach-class.log.unsaid', { count: unsaid.length })}
        </p>
      )}
      <ol className="class-log" reversed={true}>
        {[...entries].reverse().map((entry) => (
          <li key={entry.n}>
            <span className="quiet">{timeOf(entry.atMs)}</span> {entryText(entry)}
          </li>
        ))}
      </ol>
    </>
  );
}

function timeOf(atMs: number): string {
  return new Date(atMs).toLocaleTimeString('en-GB', { timeStyle: 'medium' });
}
