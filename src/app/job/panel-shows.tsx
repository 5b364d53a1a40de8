import { useMemo } from 'react';
import { say, sayWord } from '../../i18n/index.ts';
import { channelName, readingText } from '../../wording/index.ts';
import { stepAt } from '../reading/step-at.ts';
import { useStore } from '../session/store.ts';
import { settings } from '../settings/settings.ts';
import { shortClock } from '../working/clock-text.ts';
import { useFacts, useSession, useSessionPart } from '../working/session-context.tsx';
import { isOnPanel } from './panel-channels.ts';

/** The controller's own display: the step, a lockout in words, and the few values it knows. */
export function PanelShows() {
  const events = useSessionPart((state) => state.events);
  const shownS = useSessionPart((state) => state.shownS);
  const at = useMemo(() => stepAt(events, shownS), [events, shownS]);
  return (
    <section className="panel-shows" aria-labelledby="panel-shows-title" data-step={at.step}>
      <p className="quiet" id="panel-shows-title">
        {say('job.panel-shows')}
      </p>
      {at.lockout === null ? (
        <p className="panel-shows-step">
          <strong>{sayWord('step', at.step, '.title')}</strong>
          <span className="quiet">
            {say('job.in-step', { seconds: Math.floor(shownS - at.sinceS) })}
          </span>
        </p>
      ) : (
        <>
          <p className="panel-shows-step" data-lockout={true}>
            <strong>
              {say('app.lockout.title', { cause: sayWord('cause', at.lockout.cause) })}
            </strong>
          </p>
          <p className="quiet">
            {say('app.lockout.where', {
              step: sayWord('step', at.lockout.step, '.title').toLowerCase(),
              time: shortClock(at.lockout.atS),
            })}
            {at.resets > 0 ? `. ${say('app.lockout.resets', { count: at.resets })}` : ''}
          </p>
        </>
      )}
    </section>
  );
}

/** The values of the panel, as a list. */
export function PanelValues() {
  const facts = useFacts();
  const session = useSession();
  const { units } = useStore(settings);
  useSessionPart((state) => state.shownS);
  const frame = session.shownFrame();
  if (frame === null) return null;
  return (
    <dl className="panel-values">
      {facts.channels.map(({ id, kind, part }, place) =>
        part === 'visible' && kind !== 'word' && isOnPanel(id) ? (
          <div key={id}>
            <dt>{channelName(id)}</dt>
            <dd>{readingText(frame[place] ?? 0, kind, units, id)}</dd>
          </div>
        ) : null,
      )}
    </dl>
  );
}
