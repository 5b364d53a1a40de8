import { memo, useMemo } from 'react';
import { say } from '../../i18n/index.ts';
import { eventText } from '../reading/event-text.ts';
import { isGivenAway, isOfInstructor } from '../reading/hidden-faults.ts';
import type { HistoryEvent } from '../session/protocol.ts';
import { useWorkPlace } from '../work/work-place.ts';
import { shortClock } from './clock-text.ts';
import { useSession, useSessionPart } from './session-context.tsx';

/** More than this scrolls out of anyone's interest, and would slow an old laptop. */
const MOST_SHOWN = 200;

interface Props {
  /** Faults that the exercise brought may be named now. */
  readonly revealed?: boolean;
}

export function EventsTab({ revealed = false }: Props) {
  const events = useSessionPart((state) => state.events);
  const count = useSessionPart((state) => countUpTo(state.events, state.shownS));
  // What an instructor puts in is for the learner to find.
  const { isClass } = useWorkPlace();
  const shown = useMemo(
    () =>
      events
        .slice(0, count)
        .map((event, place) => ({ event, place }))
        .filter(
          ({ event }) =>
            revealed || !(isClass ? isOfInstructor(event) : isGivenAway(event, events)),
        )
        .slice(-MOST_SHOWN)
        .reverse(),
    [events, count, revealed, isClass],
  );
  if (shown.length === 0) return <p className="quiet">{say('app.events.none')}</p>;
  return (
    <ol className="events" aria-label={say('app.events.title')}>
      {shown.map(({ event, place }) => (
        <EventLine key={place} event={event} />
      ))}
    </ol>
  );
}

const EventLine = memo(function EventLine({ event }: { readonly event: HistoryEvent }) {
  const session = useSession();
  const time = shortClock(event.t);
  return (
    <li data-kind={event.type}>
      <button
        type="button"
        className="event-time"
        onClick={() => {
          session.scrub(event.t);
          session.settle();
        }}
        title={say('app.events.look', { time })}
      >
        {time}
      </button>
      <span>{eventText(event)}</span>
    </li>
  );
});

function countUpTo(events: readonly HistoryEvent[], tS: number): number {
  let count = events.length;
  while (count > 0 && (events[count - 1]?.t ?? 0) > tS + 1e-6) count -= 1;
  return count;
}
