import '../styles/working/index.css';
import '../styles/job/forms.css';
import '../styles/teach-class/index.css';
import { useMemo } from 'react';
import { say } from '../../i18n/index.ts';
import { FrontFrame } from '../front/front-frame.tsx';
import type { Store } from '../session/store.ts';
import type { Surroundings } from '../settings/theme.ts';
import { PageHeading } from '../shell/page-heading.tsx';
import { hrefOf } from '../shell/route.ts';
import { ClassRoom } from './class-room.tsx';
import { ownClass } from './own-classes.ts';
import { useInstructor } from './use-instructor.ts';

interface Props {
  readonly id: string;
  readonly surroundings: Store<Surroundings>;
}

/** A class as its instructor has it. */
export function TeachClassPage({ id, surroundings }: Props) {
  const own = useMemo(() => ownClass(id), [id]);
  if (own === null) return <UnknownClass />;
  return <Connected own={own} surroundings={surroundings} />;
}

type ConnectedProps = Omit<Props, 'id'> & { own: NonNullable<ReturnType<typeof ownClass>> };

function Connected({ own, surroundings }: ConnectedProps) {
  const client = useInstructor(own);
  if (client === null) return <p className="loading">{say('app.loading')}</p>;
  return <ClassRoom own={own} client={client} surroundings={surroundings} />;
}

function UnknownClass() {
  return (
    <FrontFrame>
      <a className="back" href={hrefOf({ page: 'classes' })}>
        ← {say('teach-class.back')}
      </a>
      <PageHeading>{say('teach-class.unknown')}</PageHeading>
      <p className="front-lead">{say('teach-class.unknown.why')}</p>
    </FrontFrame>
  );
}
