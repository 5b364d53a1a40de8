import { useState } from 'react';
import { say } from '../../i18n/index.ts';
import type { PlainGroup } from '../../scenario/editing/index.ts';
import { KeyField } from '../teach-class/key-field.tsx';
import { takeFile } from './begin-file.ts';
import type { OwnFile } from './own-files.ts';
import { readServer, saveServer } from './server-library.ts';
import { useServerFile } from './use-server-file.ts';
import { whenText } from './when-text.ts';

interface Props {
  readonly file: OwnFile;
  readonly text: string;
  readonly data: PlainGroup;
  readonly onVersion: (version: number) => void;
  readonly onText: (text: string) => void;
}

/** The same file in the library of the server, where there is one: saved there by versions. */
export function ServerPanel({ file, text, data, onVersion, onText }: Props) {
  const { kind } = file;
  const id = typeof data.id === 'string' ? data.id : file.slot;
  const { now, again } = useServerFile(kind, id);
  const [said, setSaid] = useState('');
  const [conflict, setConflict] = useState<number | null>(null);

  const save = async (baseVersion: number) => {
    setSaid(say('author.server.saving'));
    const answer = await saveServer(kind, id, text, baseVersion);
    if (answer.ok) {
      setConflict(null);
      onVersion(answer.value.version);
      setSaid(say('author.server.saved', { version: answer.value.version }));
    } else if (answer.error === 'conflict') {
      setConflict(answer.version);
      setSaid('');
    } else if (answer.error === 'refused') {
      setSaid(say('author.server.refused', { why: answer.why }));
    } else setSaid(say('author.server.not-reached'));
    again();
  };
  const open = async (version: number, asCopy: boolean) => {
    const answer = await readServer(kind, id, version);
    if (!answer.ok) setSaid(say('author.server.not-reached'));
    else if (asCopy) takeFile(kind, `${id}-version-${version}`, answer.value.text);
    else {
      onText(answer.value.text);
      setSaid(say('author.server.brought', { version }));
    }
  };
  return (
    <section className="author-part" aria-labelledby="author-server">
      <h2 id="author-server">{say('author.server')}</h2>
      {now.is === 'no server' ? <p className="quiet">{say('author.server.none')}</p> : null}
      {now.is === 'key needed' ? <KeyField wrong={now.wrong} onKey={again} /> : null}
      {now.is === 'here' ? (
        <>
          <p className="quiet">
            {file.serverVersion === 0
              ? say('author.server.not-there')
              : say('author.server.based', { version: file.serverVersion })}
          </p>
          <div className="buttons">
            <button type="button" className="button" onClick={() => save(file.serverVersion)}>
              {say('author.server.save')}
            </button>
          </div>
          {conflict === null ? null : (
            <div className="author-trouble" role="alert">
              <p>{say('author.server.conflict', { version: conflict })}</p>
              <div className="buttons">
                <button type="button" className="button" onClick={() => open(conflict, true)}>
                  {say('author.server.theirs')}
                </button>
                <button type="button" className="button" onClick={() => save(conflict)}>
                  {say('author.server.mine')}
                </button>
              </div>
            </div>
          )}
          {now.versions.length === 0 ? null : (
            <details className="fold">
              <summary>{say('author.server.versions', { count: now.versions.length })}</summary>
              <ol className="author-versions">
                {now.versions.map(({ version, savedMs, removed }) => (
                  <li key={version}>
                    <span>
                      {say(removed ? 'author.server.removed-then' : 'author.server.version', {
                        version,
                        when: whenText(savedMs),
                      })}
                    </span>
                    {removed ? null : (
                      <button type="button" className="button" onClick={() => open(version, false)}>
                        {say('author.server.bring', { version })}
                      </button>
                    )}
                  </li>
                ))}
              </ol>
            </details>
          )}
        </>
      ) : null}
      <p role="status">{said}</p>
    </section>
  );
}
