import { useState } from 'react';
import { say, sayWord } from '../../i18n/index.ts';
import { codeText } from '../class/code-words.ts';
import { EraseButton } from '../front/erase-button.tsx';
import { hrefOf } from '../shell/route.ts';
import { codeSpelt } from './code-spelt.ts';
import { forgetOwnClass, ownClasses } from './own-classes.ts';

/** The classes opened on this device; each can be gone on with after a reload or a crash. */
export function OwnClassList() {
  const [classes, setClasses] = useState(ownClasses);
  if (classes.length === 0) return null;
  const forget = (id: string) => {
    forgetOwnClass(id);
    setClasses(ownClasses());
  };
  return (
    <section className="own-classes" aria-labelledby="own-classes-title">
      <h2 id="own-classes-title">{say('teach-class.own')}</h2>
      <p className="quiet">{say('teach-class.own.about')}</p>
      <ul>
        {classes.map(({ id, code, title, way, openedMs }) => (
          <li key={id}>
            <a href={hrefOf({ page: 'class', id })}>
              <strong>{title}</strong>
              <span className="quiet">
                {sayWord('teach-class.way', way)} · {openedWhen(openedMs)}
              </span>
            </a>
            <span className="own-code" role="img" aria-label={codeSpelt(code)}>
              {codeText(code)}
            </span>
            <EraseButton
              label={say('teach-class.own.forget')}
              name={say('teach-class.own.forget-which', { title, code: codeSpelt(code) })}
              ask={say('teach-class.own.forget-ask')}
              onSure={() => forget(id)}
            />
          </li>
        ))}
      </ul>
    </section>
  );
}

function openedWhen(openedMs: number): string {
  const when = new Date(openedMs);
  return when.toLocaleString(document.documentElement.lang || 'en-GB', {
    dateStyle: 'medium',
    timeStyle: 'short',
  });
}
