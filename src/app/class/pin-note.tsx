import { say } from '../../i18n/index.ts';
import { useClass } from './class-context.ts';

/** What brings the seat to another device, and why one may want to know it. */
export function PinNote() {
  const { place } = useClass();
  return (
    <>
      <p>{say('class.pin.title', { seat: place.seat })}</p>
      <p className="class-pin">
        <span className="quiet">{say('class.pin.word')}</span> <strong>{place.pin}</strong>
      </p>
      <p className="quiet">{say('class.pin.why')}</p>
    </>
  );
}
