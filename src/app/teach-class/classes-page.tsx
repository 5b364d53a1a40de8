import '../styles/job/forms.css';
import '../styles/paper.css';
import '../styles/teach-class/open.css';
import { useState } from 'react';
import { say } from '../../i18n/index.ts';
import { FrontFrame } from '../front/front-frame.tsx';
import { PageHeading } from '../shell/page-heading.tsx';
import { hrefOf } from '../shell/route.ts';
import { readInstructorKey } from './instructor-key.ts';
import { KeyField } from './key-field.tsx';
import { NoServerNote } from './no-server-note.tsx';
import { type ClassOpened, openClass } from './open-class.ts';
import { OpenForm } from './open-form.tsx';
import { OwnClassList } from './own-class-list.tsx';
import { useAbout } from './use-about.ts';

/** Where classes are opened, and where those opened here before are found again. */
export function ClassesPage() {
  const { now, again } = useAbout();
  const [busy, setBusy] = useState(false);
  const [opened, setOpened] = useState<ClassOpened | null>(null);
  const open = (...wish: Parameters<typeof openClass>) => {
    setBusy(true);
    void openClass(...wish).then((answer) => {
      setBusy(false);
      setOpened(answer);
      if (answer.ok) location.hash = hrefOf({ page: 'class', id: answer.own.id });
    });
  };
  const wrongKey = opened?.ok === false && opened.error === 'wrong key';
  const needsKey = now.is === 'here' && (!now.about.mayOpen || wrongKey);
  return (
    <FrontFrame>
      <a className="back" href={hrefOf({ page: 'teach' })}>
        ← {say('app.teach.title')}
      </a>
      <PageHeading>{say('app.teach.open')}</PageHeading>
      <p className="front-lead">{say('teach-class.lead')}</p>
      <OwnClassList />
      {now.is === 'here' ? (
        <a className="back" href={hrefOf({ page: 'kept-classes' })}>
          {say('teach-class.kept')} →
        </a>
      ) : null}
      {now.is === 'asking' ? <p className="quiet">{say('teach-class.asking')}</p> : null}
      {now.is === 'no server' ? <NoServerNote onAgain={again} /> : null}
      {needsKey ? (
        <KeyField
          wrong={readInstructorKey() !== ''}
          onKey={() => {
            setOpened(null);
            again();
          }}
        />
      ) : null}
      {now.is === 'here' && !needsKey ? <OpenForm busy={busy} onOpen={open} /> : null}
      <p className="invalid" role="alert">
        {troubleOf(opened)}
      </p>
    </FrontFrame>
  );
}

function troubleOf(opened: ClassOpened | null): string {
  if (opened === null) return '';
  if (opened.ok) return opened.kept ? '' : say('teach-class.not-kept');
  if (opened.error === 'wrong key') return '';
  if (opened.error === 'no server') return say('teach-class.open.no-server');
  return say('teach-class.open.refused', { detail: opened.detail });
}
