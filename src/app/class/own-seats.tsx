import { say } from '../../i18n/index.ts';
import { SureButton } from '../front/sure-button.tsx';
import { hrefOf } from '../shell/route.ts';
import { deviceShelf } from '../work/shelf.ts';
import { clearShelf, shelfOfSeat } from './class-shelf.ts';
import { codeText } from './code-words.ts';
import { forgetPlace, type SeatPlace } from './seat-place.ts';

interface Props {
  readonly places: readonly SeatPlace[];
  /** From the address; then only that class matters. Empty where there is none. */
  readonly code: string;
  readonly onForgotten: () => void;
}

/** Seats that this device has already: one press and one is back. */
export function OwnSeats({ places, code, onForgotten }: Props) {
  const shown = code === '' ? places : places.filter((place) => place.code === code);
  if (shown.length === 0) return null;
  return (
    <section className="class-own" aria-labelledby="own-seats-title">
      <h2 id="own-seats-title" className="choices-title">
        {say('class.own.title')}
      </h2>
      <ul>
        {shown.map((place) => (
          <li key={place.code}>
            <p>
              <strong>{say('class.own.seat', { seat: place.seat, name: place.nickname })}</strong>{' '}
              <span className="quiet">
                {say('class.own.of', {
                  code: codeText(place.code),
                  day: new Date(place.joinedISO).toLocaleDateString(),
                })}
              </span>
            </p>
            <p className="buttons">
              <a className="button primary" href={hrefOf({ page: 'seat', code: place.code })}>
                {say('class.own.go')}
              </a>
              <SureButton
                label={say('class.own.forget')}
                name={say('class.own.forget-name', {
                  seat: place.seat,
                  code: codeText(place.code),
                })}
                ask={say('class.own.forget-sure', { pin: place.pin })}
                sure={say('class.own.forget')}
                keep={say('class.own.keep')}
                onSure={() => {
                  clearShelf(shelfOfSeat(deviceShelf, place));
                  forgetPlace(deviceShelf, place.code);
                  onForgotten();
                }}
              />
            </p>
          </li>
        ))}
      </ul>
      <p className="quiet">{say('class.own.else')}</p>
    </section>
  );
}
