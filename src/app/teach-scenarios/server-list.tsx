import { useState } from 'react';
import { say, sayWord } from '../../i18n/index.ts';
import { SureButton } from '../front/sure-button.tsx';
import { plantTitle } from '../library/exercises.ts';
import { hrefOf } from '../shell/route.ts';
import { KeyField } from '../teach-class/key-field.tsx';
import { deviceShelf } from '../work/shelf.ts';
import { takeFile } from './begin-file.ts';
import { readOwn } from './own-files.ts';
import { readServer, removeServer, type ServerFile } from './server-library.ts';
import { useServerList } from './use-server-file.ts';
import { whenText } from './when-text.ts';

/** What the server keeps for everyone who teaches with it. */
export function ServerList() {
  const { list, again } = useServerList();
  const [said, setSaid] = useState('');
  const told = async (done: Promise<{ readonly ok: boolean }>) => {
    const answer = await done;
    setSaid(answer.ok ? '' : say('author.server.not-reached'));
    again();
  };
  const restore = async ({ kind, id, version }: ServerFile) => {
    const answer = await readServer(kind, id, Math.max(1, version - 1));
    if (answer.ok) takeFile(kind, id, answer.value.text);
    else setSaid(say('author.server.not-reached'));
  };
  return (
    <section aria-labelledby="author-server-list">
      <h2 className="choices-title" id="author-server-list">
        {say('author.server')}
      </h2>
      {list.is === 'no server' ? <p className="choices-lead">{say('author.server.none')}</p> : null}
      {list.is === 'key needed' ? <KeyField wrong={list.wrong} onKey={again} /> : null}
      {list.is === 'here' ? (
        <>
          <p className="choices-lead">
            {say(list.files.length === 0 ? 'author.server.empty' : 'author.server.about')}
          </p>
          <ul className="author-files">
            {list.files.map((file) => {
              const { kind, id, title, plant, version, savedMs, removed } = file;
              const isOwn = readOwn(deviceShelf, kind, id) !== null;
              return (
                <li key={`${kind} ${id}`}>
                  <div>
                    {removed ? (
                      <span>{title}</span>
                    ) : (
                      <a href={hrefOf({ page: 'scenario', kind, id })}>{title}</a>
                    )}
                    <p className="quiet">
                      {[
                        sayWord('author.kind', kind),
                        ...(plant === '' ? [] : [plantTitle(plant)]),
                        say(removed ? 'author.server.removed-then' : 'author.server.version', {
                          version,
                          when: whenText(savedMs),
                        }),
                        ...(isOwn ? [say('author.server.own-too')] : []),
                      ].join(' · ')}
                    </p>
                  </div>
                  <div className="buttons">
                    {removed ? (
                      <button type="button" className="button" onClick={() => restore(file)}>
                        {say('author.server.bring-back')}
                      </button>
                    ) : (
                      <SureButton
                        label={say('author.server.remove')}
                        name={say('author.server.remove.of', { title })}
                        ask={say('author.server.remove.ask')}
                        sure={say('author.server.remove')}
                        keep={say('author.erase.keep')}
                        onSure={() => void told(removeServer(kind, id, version))}
                      />
                    )}
                  </div>
                </li>
              );
            })}
          </ul>
        </>
      ) : null}
      <p role="status">{said}</p>
    </section>
  );
}
