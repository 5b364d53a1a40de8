import type { ReactNode } from 'react';
import { say } from '../../i18n/index.ts';
import { FrontFrame } from '../front/front-frame.tsx';
import { PageHeading } from '../shell/page-heading.tsx';
import { WayOut } from '../shell/way-out.tsx';
import { Notices } from './notices.tsx';

interface Props {
  readonly title: string;
  readonly children: ReactNode;
}

/** A page of an exercise away from the plant: before the drive, and when all is done. */
export function ExerciseFront({ title, children }: Props) {
  return (
    <FrontFrame>
      <WayOut className="back" href="#/practise">
        ← {say('job.to-practise')}
      </WayOut>
      <Notices />
      <PageHeading>{title}</PageHeading>
      {children}
    </FrontFrame>
  );
}
