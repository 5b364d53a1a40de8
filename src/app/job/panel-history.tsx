import { useState } from 'react';
import { say } from '../../i18n/index.ts';
import { eventText } from '../reading/event-text.ts';
import { shortClock } from '../working/clock-text.ts';
import { useSession, useSessionPart } from '../working/session-context.tsx';

/** What the controller has kept: its lockouts and resets, newest first. */
export function PanelHistory() {
  const session = useSession();
  const [open, setOpen] = useState(false);
  const events = useSessionPart((state) => state.events);
  const kept = open
    ? events.filter(({ type }) => type === 'lockout' || type === 'reset').reverse()
    : [];
  return (
    <section aria-labelledby="history-title">
      <h3 id="history-title">{say('job.history')}</h3>
      <button
        type="button"
        className="button"
        aria-expanded={open}
        onClick={() => {
          if (!open) session.perform({ type: 'check', what: 'history', place: '', other: '' });
          setOpen(!open);
        }}
      >
        {say('job.history.read')}
      </button>
      {open && kept.length === 0 ? <p className="quiet">{say('job.history.none')}</p> : null}
      <ul className="note-list">
        {kept.map((event) => (
          <li key={`${event.type} ${event.t}`}>
            <span className="quiet">{shortClock(event.t)}</span> {eventText(event)}
          </li>
        ))}
      </ul>
    </section>
  );
}
