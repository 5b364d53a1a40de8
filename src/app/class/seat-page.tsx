import '../styles/job/forms.css';
import '../styles/class.css';
import { useState } from 'react';
import { say } from '../../i18n/index.ts';
import { FrontFrame } from '../front/front-frame.tsx';
import type { Store } from '../session/store.ts';
import type { Surroundings } from '../settings/theme.ts';
import { PageHeading } from '../shell/page-heading.tsx';
import { hrefOf } from '../shell/route.ts';
import { deviceShelf } from '../work/shelf.ts';
import { SeatProvider, useClassPart } from './class-context.ts';
import { ClassNotes } from './class-notes.tsx';
import { ClassStrip } from './class-strip.tsx';
import { ClosedPage } from './closed-page.tsx';
import { codeText } from './code-words.ts';
import { GonePage } from './gone-page.tsx';
import { OwnWork } from './own-work.tsx';
import { readPlace } from './seat-place.ts';
import { TogetherWork } from './together-work.tsx';
import { useConnectedSeat } from './use-connected-seat.ts';
import { ComingIn, WaitingPage } from './waiting-page.tsx';

interface Props {
  readonly code: string;
  readonly surroundings: Store<Surroundings>;
}

/** In a class: what goes on in it, under the strip that says so. */
export function SeatPage({ code, surroundings }: Props) {
  const [place, setPlace] = useState(() => readPlace(deviceShelf, code));
  const seat = useConnectedSeat(place);
  if (place === null) return <NoSeat code={code} />;
  if (seat === null) return <p className="loading">{say('app.loading')}</p>;
  return (
    <SeatProvider value={seat}>
      <div className="in-class">
        <ClassStrip onPlace={setPlace} />
        <InClass surroundings={surroundings} onPlace={setPlace} />
      </div>
    </SeatProvider>
  );
}

function InClass(props: {
  readonly surroundings: Store<Surroundings>;
  readonly onPlace: Parameters<typeof GonePage>[0]['onPlace'];
}) {
  const link = useClassPart((now) => now.link);
  const phase = useClassPart((now) => now.book.phase);
  const way = useClassPart((now) => now.book.way);
  if (link === 'gone') return <GonePage onPlace={props.onPlace} />;
  return (
    <>
      <ClassNotes />
      {pageOf()}
    </>
  );

  function pageOf() {
    switch (phase) {
      case 'not opened':
        return <ComingIn />;
      case 'gathering':
        return <WaitingPage />;
      case 'closed':
        return <ClosedPage surroundings={props.surroundings} />;
      case 'under way':
        return way === 'together' ? (
          <TogetherWork surroundings={props.surroundings} />
        ) : (
          <OwnWork surroundings={props.surroundings} />
        );
    }
  }
}

/** An address of a class in which this device has no seat. */
function NoSeat({ code }: { readonly code: string }) {
  return (
    <FrontFrame>
      <PageHeading>{say('class.no-seat.title', { code: codeText(code) })}</PageHeading>
      <p className="front-lead">{say('class.no-seat.lead')}</p>
      <p className="front-actions">
        <a className="button primary" href={hrefOf({ page: 'join', code })}>
          {say('class.join.title')}
        </a>
      </p>
    </FrontFrame>
  );
}
