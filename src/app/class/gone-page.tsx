import { useState } from 'react';
import { takeSeat } from '../../classroom/client/index.ts';
import { say } from '../../i18n/index.ts';
import { FrontFrame } from '../front/front-frame.tsx';
import { PageHeading } from '../shell/page-heading.tsx';
import { hrefOf } from '../shell/route.ts';
import { deviceShelf } from '../work/shelf.ts';
import { useClass, useClassPart } from './class-context.ts';
import { clearShelf } from './class-shelf.ts';
import { errorText } from './code-words.ts';
import { keepPlace, type SeatPlace } from './seat-place.ts';

/** The seat is no longer this page's: why, and the ways on. */
export function GonePage({ onPlace }: { readonly onPlace: (place: SeatPlace) => void }) {
  const { place, shelf } = useClass();
  const gone = useClassPart((now) => now.gone);
  const [trouble, setTrouble] = useState('');
  const [isAsking, setAsking] = useState(false);
  const isElsewhere = gone === 'seat taken elsewhere';
  const takeBack = async () => {
    if (isAsking) return;
    setAsking(true);
    const { code, seat, pin } = place;
    const answer = await takeSeat({ code, seat, pin });
    setAsking(false);
    if (!answer.ok) {
      setTrouble(errorText(answer.error));
      return;
    }
    // What was done elsewhere since is the newer work.
    clearShelf(shelf);
    const { ok: _, ...seated } = answer;
    const taken = { ...place, ...seated };
    keepPlace(deviceShelf, taken);
    onPlace(taken);
  };
  return (
    <FrontFrame>
      <PageHeading>{say(isElsewhere ? 'class.gone.elsewhere' : 'class.gone.title')}</PageHeading>
      <p className="front-lead" role="alert">
        {isElsewhere ? say('class.gone.elsewhere-lead') : errorText(gone ?? '')}
      </p>
      <p className="invalid" role="alert">
        {trouble}
      </p>
      <p className="buttons class-ways">
        {isElsewhere ? (
          <button
            type="button"
            className="button primary"
            aria-disabled={isAsking}
            onClick={() => void takeBack()}
          >
            {say('class.gone.take-back')}
          </button>
        ) : null}
        {gone === 'other version' || gone === 'message not understood' ? (
          <button type="button" className="button primary" onClick={() => location.reload()}>
            {say('app.broken.reload')}
          </button>
        ) : null}
        <a className="button" href={hrefOf({ page: 'join', code: '' })}>
          {say('class.gone.other')}
        </a>
      </p>
    </FrontFrame>
  );
}
