import '../styles/job/forms.css';
import '../styles/class.css';
import { useState } from 'react';
import type { AtTheDoor } from '../../classroom/client/index.ts';
import { say } from '../../i18n/index.ts';
import { BackToFront } from '../front/back-to-front.tsx';
import { FrontFrame } from '../front/front-frame.tsx';
import { PageHeading } from '../shell/page-heading.tsx';
import { hrefOf } from '../shell/route.ts';
import { deviceShelf } from '../work/shelf.ts';
import { clearShelf, shelfOfSeat } from './class-shelf.ts';
import { JoinForm } from './join-form.tsx';
import { OwnSeats } from './own-seats.tsx';
import { keepPlace, listPlaces } from './seat-place.ts';
import { TakeSeatForm } from './take-seat-form.tsx';

/** The door of a class: the code, a name, and one is in. */
export function JoinPage({ code: fromAddress }: { readonly code: string }) {
  const [code, setCode] = useState(fromAddress);
  const [places, setPlaces] = useState(() => listPlaces(deviceShelf));
  const goIn = (answer: Extract<AtTheDoor, { ok: true }>, atDoor: string, pinRead: boolean) => {
    const { ok: _, ...seated } = answer;
    // A seat taken on comes with its work; what an earlier stay here left is older.
    clearShelf(shelfOfSeat(deviceShelf, seated));
    keepPlace(deviceShelf, {
      ...seated,
      code: atDoor,
      joinedISO: new Date().toISOString(),
      pinRead,
    });
    location.hash = hrefOf({ page: 'seat', code: atDoor });
  };
  return (
    <FrontFrame>
      <BackToFront />
      <PageHeading>{say('class.join.title')}</PageHeading>
      <p className="front-lead">{say('class.join.lead')}</p>
      <OwnSeats
        places={places}
        code={fromAddress}
        onForgotten={() => setPlaces(listPlaces(deviceShelf))}
      />
      <div className="class-door">
        <JoinForm code={code} onCode={setCode} onIn={(answer, at) => goIn(answer, at, false)} />
        <TakeSeatForm code={code} onCode={setCode} onIn={(answer, at) => goIn(answer, at, true)} />
      </div>
    </FrontFrame>
  );
}
