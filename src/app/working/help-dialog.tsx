import { useEffect, useRef } from 'react';
import { say } from '../../i18n/index.ts';
import { useStore } from '../session/store.ts';
import { settings } from '../settings/settings.ts';
import { SHORTCUTS } from './shortcuts.ts';

export function HelpDialog({ onClose }: { readonly onClose: () => void }) {
  const dialog = useRef<HTMLDialogElement>(null);
  const { shortcuts } = useStore(settings);
  useEffect(() => dialog.current?.showModal(), []);
  return (
    <dialog className="help" ref={dialog} onClose={onClose} aria-labelledby="help-title">
      <h2 id="help-title">{say('app.help.title')}</h2>
      <p>{say('app.help.text')}</p>
      <h3>{say('app.help.keys')}</h3>
      <dl className="keys">
        {SHORTCUTS.map(({ key, code }) => (
          <div key={key}>
            <dt>
              {key.split(' ').map((each) => (
                <kbd key={each}>{each}</kbd>
              ))}
            </dt>
            <dd>{say(code)}</dd>
          </div>
        ))}
      </dl>
      <label className="check">
        <input
          type="checkbox"
          checked={shortcuts}
          onChange={(event) => settings.write({ shortcuts: event.target.checked })}
        />
        {say('app.help.keys-on')}
      </label>
      <p className="caution">
        <strong>{say('app.caution.short')}</strong> {say('app.caution.front')}
      </p>
      <form method="dialog">
        <button type="submit" className="button primary">
          {say('app.help.close')}
        </button>
      </form>
    </dialog>
  );
}
