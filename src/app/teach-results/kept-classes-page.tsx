import '../styles/job/forms.css';
import '../styles/teach-results.css';
import { useCallback, useEffect, useState } from 'react';
import type { ClassLine } from '../../classroom/protocol/index.ts';
import { say, sayWord } from '../../i18n/index.ts';
import { FrontFrame } from '../front/front-frame.tsx';
import { PageHeading } from '../shell/page-heading.tsx';
import { hrefOf } from '../shell/route.ts';
import { KeyField } from '../teach-class/key-field.tsx';
import { type AskedResults, askKept } from './ask-results.ts';
import { whenText } from './when-text.ts';

/** Every class that the server keeps, whoever opened it. */
export function KeptClassesPage() {
  const [asked, setAsked] = useState<AskedResults<readonly ClassLine[]> | null>(null);
  const again = useCallback(() => {
    void askKept().then(setAsked);
  }, []);
  useEffect(again, [again]);
  return (
    <FrontFrame>
      <a className="back" href={hrefOf({ page: 'classes' })}>
        ← {say('app.teach.open')}
      </a>
      <PageHeading>{say('teach-results.kept')}</PageHeading>
      {asked === null ? <p className="quiet">{say('teach-results.asking')}</p> : null}
      {asked?.ok === false ? (
        <>
          <p className="invalid" role="alert">
            {say(`teach-results.trouble.${asked.trouble}`, { detail: asked.detail })}
          </p>
          {asked.trouble === 'not allowed' ? <KeyField wrong={false} onKey={again} /> : null}
        </>
      ) : null}
      {asked?.ok === true ? <KeptList classes={asked.value} /> : null}
    </FrontFrame>
  );
}

function KeptList({ classes }: { readonly classes: readonly ClassLine[] }) {
  if (classes.length === 0) return <p>{say('teach-results.kept.none')}</p>;
  return (
    <ul className="kept-classes">
      {classes.map(({ id, title, kind, way, phase, openedMs, seats }) => (
        <li key={id}>
          <a href={hrefOf({ page: 'class-results', id })}>
            <strong>{title}</strong>
            <span className="quiet">
              {sayWord('class-result.kind', kind)} · {sayWord('teach-class.way', way)} ·{' '}
              {whenText(openedMs)} · {say('teach-results.seats', { count: seats })} ·{' '}
              {sayWord('teach-results.phase', phase)}
            </span>
          </a>
        </li>
      ))}
    </ul>
  );
}
