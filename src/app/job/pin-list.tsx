import type { Pin } from '../../../machines/job/index.ts';
import { say, sayWord } from '../../i18n/index.ts';
import { shortClock } from '../working/clock-text.ts';
import { useFacts, useSession } from '../working/session-context.tsx';
import { useExercise } from './exercise-context.tsx';
import { pinWords } from './point-words.ts';

/** Readings kept on paper, each with its time and step; the time leads back to it in the record. */
export function PinList() {
  const { desk } = useExercise();
  if (desk.pins.length === 0) return <p className="quiet">{say('job.notes.no-pins')}</p>;
  return (
    <ol className="pins">
      {desk.pins.map((pin, place) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: pins are only ever added, and claims name them by place
        <PinLine key={place} pin={pin} />
      ))}
    </ol>
  );
}

function PinLine({ pin }: { readonly pin: Pin }) {
  const facts = useFacts();
  const session = useSession();
  const time = shortClock(pin.t);
  return (
    <li className="pin">
      <span className="pin-what">{pinWords(facts, pin)}</span>
      <strong className="pin-reading">{pin.reading}</strong>
      <span className="pin-when">
        <button
          type="button"
          className="event-time"
          title={say('app.events.look', { time })}
          onClick={() => {
            session.scrub(pin.t);
            session.settle();
          }}
        >
          {time}
        </button>
        {sayWord('step', pin.step, '.title')}
      </span>
    </li>
  );
}
