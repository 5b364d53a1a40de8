import '../styles/working/index.css';
import '../styles/teach-class/projector.css';
import { useEffect, useMemo, useState } from 'react';
import { connectProjector } from '../../classroom/client/index.ts';
import type { ProjectorClient } from '../../classroom/index.ts';
import { say } from '../../i18n/index.ts';
import { codeText, errorText } from '../class/code-words.ts';
import { wakeOfPage } from '../class/wake-of-page.ts';
import { titleOfClass } from '../class/what-words.ts';
import { type Store, useStore, useStorePart } from '../session/store.ts';
import type { Surroundings } from '../settings/theme.ts';
import { PageHeading } from '../shell/page-heading.tsx';
import { watchBoard } from './board-watch.ts';
import { codeSpelt } from './code-spelt.ts';
import { ProjectedBoard } from './projected-board.tsx';
import { ProjectedPoll } from './projected-poll.tsx';
import { ProjectedPlant, ProjectedSpotlight } from './projected-run.tsx';
import { ProjectedWayIn } from './projected-way-in.tsx';

interface Props {
  readonly id: string;
  readonly projectorKey: string;
  readonly surroundings: Store<Surroundings>;
}

/** What a class sees on the wall. There is nothing to press: the instructor's page says what is shown. */
export function ProjectorPage({ id, projectorKey, surroundings }: Props) {
  const [client, setClient] = useState<ProjectorClient | null>(null);
  useEffect(() => {
    const opened = connectProjector({ class: id, key: projectorKey }, { wake: wakeOfPage });
    setClient(opened);
    return () => {
      opened.close();
      setClient(null);
    };
  }, [id, projectorKey]);
  if (client === null) return <p className="loading">{say('app.loading')}</p>;
  return <Projector client={client} surroundings={surroundings} />;
}

function Projector({
  client,
  surroundings,
}: { client: ProjectorClient } & Pick<Props, 'surroundings'>) {
  const look = useStore(surroundings);
  const { book, link, gone, code } = useStore(client.store);
  const board = useMemo(() => watchBoard(client.store, () => Date.now()), [client]);
  const inNow = useStorePart(board, (rows) => rows.filter(({ here }) => here).length);
  const { shows } = book;
  return (
    <div className="class-projector" data-shows={shows}>
      <header className="projector-bar">
        <PageHeading>
          {book.what === null ? say('teach-class.projector') : titleOfClass(book.what)}
        </PageHeading>
        <p role="status">{statusText(link, gone, book.phase)}</p>
        {shows === 'way in' || code === '' ? null : (
          <p className="projector-code">
            <span className="for-readers">{codeSpelt(code)}</span>
            <span aria-hidden="true">{codeText(code)}</span>
          </p>
        )}
        <p className="projector-in">{say('teach-class.projector.in', { count: inNow })}</p>
      </header>
      <main>
        {shows === 'way in' ? <ProjectedWayIn client={client} /> : null}
        {shows === 'board' ? <ProjectedBoard board={board} /> : null}
        {shows === 'plant' ? <ProjectedPlant client={client} look={look} /> : null}
        {shows === 'spotlight' ? <ProjectedSpotlight client={client} look={look} /> : null}
        {shows === 'poll' ? <ProjectedPoll client={client} /> : null}
      </main>
    </div>
  );
}

type Now = ReturnType<ProjectorClient['store']['read']>;

function statusText(link: Now['link'], gone: Now['gone'], phase: Now['book']['phase']): string {
  if (link === 'gone' && gone !== null) {
    return say('teach-class.gone', { why: errorText(gone) });
  }
  if (link === 'away') return say('teach-class.link.away');
  return phase === 'closed' ? say('teach-class.closed') : '';
}
