import '../styles/job/forms.css';
import '../styles/teach-scenarios.css';
import { useState } from 'react';
import { say } from '../../i18n/index.ts';
import { FrontFrame } from '../front/front-frame.tsx';
import { PageHeading } from '../shell/page-heading.tsx';
import { hrefOf } from '../shell/route.ts';
import { deviceShelf } from '../work/shelf.ts';
import { ImportButton } from './import-button.tsx';
import { NewFileForm } from './new-file-form.tsx';
import { listOwn } from './own-files.ts';
import { OwnList } from './own-list.tsx';
import { ServerList } from './server-list.tsx';
import { ShippedList } from './shipped-list.tsx';
import { useAuthor } from './use-author.ts';

/** Files of one's own: begun, brought in, gone on with; and the shipped ones to start from. */
export function ScenariosPage() {
  const author = useAuthor();
  const [own, setOwn] = useState(() => listOwn(deviceShelf));
  return (
    <FrontFrame>
      <div className="author-home">
        <a className="back" href={hrefOf({ page: 'teach' })}>
          ← {say('app.teach.title')}
        </a>
        <PageHeading>{say('author.title')}</PageHeading>
        <p className="front-lead">{say('author.lead')}</p>
        <section aria-labelledby="author-own">
          <h2 className="choices-title" id="author-own">
            {say('author.own')}
          </h2>
          <p className="choices-lead">
            {say(own.length === 0 ? 'author.own.none' : 'author.own.about')}
          </p>
          <OwnList files={own} onChange={() => setOwn(listOwn(deviceShelf))} />
        </section>
        <section aria-labelledby="author-new">
          <h2 className="choices-title" id="author-new">
            {say('author.new')}
          </h2>
          {author.trouble === null ? null : (
            <div className="author-trouble" role="alert">
              <p>{say('author.broken', { detail: author.trouble })}</p>
              <button type="button" className="button" onClick={author.again}>
                {say('author.broken.again')}
              </button>
            </div>
          )}
          <NewFileForm facts={author.facts} />
          <ImportButton />
        </section>
        <ServerList />
        <ShippedList />
      </div>
    </FrontFrame>
  );
}
