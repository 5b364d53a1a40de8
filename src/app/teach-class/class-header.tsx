import { useState } from 'react';
import { say, sayWord } from '../../i18n/index.ts';
import { codeText } from '../class/code-words.ts';
import { Brand } from '../front/front-frame.tsx';
import { SureButton } from '../front/sure-button.tsx';
import { useStorePart } from '../session/store.ts';
import { ThemeButton } from '../settings/theme-button.tsx';
import { UnitsButton } from '../settings/units-button.tsx';
import { PageHeading } from '../shell/page-heading.tsx';
import { hrefOf } from '../shell/route.ts';
import { codeSpelt } from './code-spelt.ts';
import { InviteDialog } from './invite-dialog.tsx';
import { useBook, useRows, useTeach } from './teach-context.ts';

/** What class it is, how one comes in, how many are, and its beginning and end. */
export function ClassHeader() {
  const { own, say: tell } = useTeach();
  const { phase } = useBook();
  const inNow = useRows().filter(({ here }) => here).length;
  const [inviting, setInviting] = useState(false);
  return (
    <header className="class-bar">
      <Brand />
      <div className="class-where">
        <a href={hrefOf({ page: 'classes' })}>{say('teach-class.back')}</a> ·{' '}
        <PageHeading>{own.title}</PageHeading>
        <span className="class-way"> · {sayWord('teach-class.way', own.way)}</span>
      </div>
      <ServerLink />
      <p className="class-in">
        <strong>{inNow}</strong> {say('teach-class.in')}
      </p>
      <button
        type="button"
        className="button class-code"
        aria-label={say('teach-class.invite.open', { code: codeSpelt(own.code) })}
        onClick={() => setInviting(true)}
      >
        <span>{codeText(own.code)}</span>
      </button>
      {phase === 'gathering' ? (
        <button
          type="button"
          className="button primary"
          onClick={() => void tell({ type: 'begin' })}
        >
          {say('teach-class.begin')}
        </button>
      ) : null}
      {phase === 'closed' ? (
        <p className="class-closed">{say('teach-class.closed')}</p>
      ) : (
        <SureButton
          label={say('teach-class.close')}
          ask={say('teach-class.close.ask')}
          sure={say('teach-class.close.sure')}
          keep={say('teach-class.close.keep')}
          onSure={() => void tell({ type: 'close' })}
        />
      )}
      <a className="button plain" href={hrefOf({ page: 'class-results', id: own.id })}>
        {say('teach-class.results')}
      </a>
      <div className="class-preferences">
        <UnitsButton />
        <ThemeButton />
      </div>
      {inviting ? <InviteDialog onClose={() => setInviting(false)} /> : null}
    </header>
  );
}

/** Says so when the server is not there: the class goes on where it can, and catches up by itself. */
function ServerLink() {
  const { client } = useTeach();
  const link = useStorePart(client.store, (now) => now.link);
  return (
    <p className="class-link" role="status" data-link={link}>
      {link === 'live' ? '' : say(`teach-class.link.${link}`)}
    </p>
  );
}
