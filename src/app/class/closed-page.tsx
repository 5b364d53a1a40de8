import { useEffect, useState } from 'react';
import { say } from '../../i18n/index.ts';
import { FrontFrame } from '../front/front-frame.tsx';
import type { Store } from '../session/store.ts';
import type { Surroundings } from '../settings/theme.ts';
import { PageHeading } from '../shell/page-heading.tsx';
import { useBookPart, useClass, useClassPart } from './class-context.ts';
import { OwnWork } from './own-work.tsx';
import { tellKept } from './tell-kept.ts';
import { plantOfClass, titleOfClass } from './what-words.ts';

/** The class is over: what came of one's own work, and the way to look at it again. */
export function ClosedPage({ surroundings }: { readonly surroundings: Store<Surroundings> }) {
  const what = useClassPart((now) => now.book.what);
  const way = useClassPart((now) => now.book.way);
  const outcome = useBookPart((book) => book.outcome);
  const handedIn = useBookPart((book) => book.handedIn);
  const hasWork = useBookPart((book) => book.attempt > 0);
  const [looking, setLooking] = useState(false);
  const seat = useClass();
  const isLive = useClassPart((now) => now.link === 'live');
  useEffect(() => {
    if (isLive && what !== null && way === 'own copies') tellKept(seat, what);
  }, [seat, isLive, what, way]);
  if (looking) return <OwnWork surroundings={surroundings} />;
  const isOwn = way === 'own copies' && hasWork;
  const plant = what === null ? null : plantOfClass(what);
  return (
    <FrontFrame>
      <PageHeading>{say('class.closed.title')}</PageHeading>
      {what === null ? null : (
        <p className="front-lead">
          {titleOfClass(what)}
          {plant === null ? '' : ` · ${plant.title}`}
        </p>
      )}
      {isOwn ? (
        <div className="class-own-result">
          {what?.kind === 'start' ? (
            <p>{say('class.closed.thanks')}</p>
          ) : outcome === null ? (
            <p>{say('class.closed.not-finished')}</p>
          ) : (
            <>
              <p className="class-outcome">
                <span className="quiet">{say('class.closed.outcome')}</span>{' '}
                <strong>
                  {say('class.closed.percent', { percent: Math.round(outcome * 100) })}
                </strong>
              </p>
              <p className="quiet">
                {say(handedIn ? 'class.handed-in.done' : 'class.closed.not-handed-in')}
              </p>
            </>
          )}
        </div>
      ) : (
        <p>{say('class.closed.thanks')}</p>
      )}
      <p className="buttons">
        {isOwn ? (
          <button type="button" className="button primary" onClick={() => setLooking(true)}>
            {say(outcome === null ? 'class.closed.go-on' : 'class.closed.look')}
          </button>
        ) : null}
        <a className="button" href="#/">
          {say('class.closed.home')}
        </a>
      </p>
    </FrontFrame>
  );
}
