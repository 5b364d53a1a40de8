import { say, sayWord } from '../../i18n/index.ts';
import { dataIn, isGroup } from '../../scenario/editing/index.ts';
import { SureButton } from '../front/sure-button.tsx';
import { plantTitle } from '../library/exercises.ts';
import { hrefOf } from '../shell/route.ts';
import { saveFile } from '../teach-paper/save-file.ts';
import { deviceShelf } from '../work/shelf.ts';
import { beginFile } from './begin-file.ts';
import { exported } from './editor-bar.tsx';
import { eraseOwn, type OwnFile } from './own-files.ts';
import { whenText } from './when-text.ts';

interface Props {
  readonly files: readonly OwnFile[];
  readonly onChange: () => void;
}

/** What was written on this device, the latest first. */
export function OwnList({ files, onChange }: Props) {
  if (files.length === 0) return null;
  return (
    <ul className="author-files">
      {files.map((file) => {
        const { kind, slot, text, savedText, typedISO } = file;
        const { title, plant } = headOf(text, slot);
        const state = savedText === text ? 'saved' : savedText === null ? 'new' : 'changed';
        return (
          <li key={`${kind} ${slot}`}>
            <div>
              <a href={hrefOf({ page: 'scenario', kind, id: slot })}>{title}</a>
              <p className="quiet">
                {[
                  sayWord('author.kind', kind),
                  ...(plant === '' ? [] : [plantTitle(plant)]),
                  whenText(typedISO),
                  say(`author.state.${state}`),
                ].join(' · ')}
              </p>
            </div>
            <div className="buttons">
              <button
                type="button"
                className="button"
                aria-label={say('author.copy.of', { title })}
                onClick={() => beginFile(kind, `${slot}-copy`, text)}
              >
                {say('author.copy')}
              </button>
              <button
                type="button"
                className="button"
                aria-label={say('author.export.of', { title })}
                onClick={() => saveFile(exported(file, text))}
              >
                {say('author.export')}
              </button>
              <SureButton
                label={say('author.erase')}
                name={say('author.erase.of', { title })}
                ask={say('author.erase.ask')}
                sure={say('author.erase.sure')}
                keep={say('author.erase.keep')}
                onSure={() => {
                  eraseOwn(deviceShelf, kind, slot);
                  onChange();
                }}
              />
            </div>
          </li>
        );
      })}
    </ul>
  );
}

function headOf(text: string, slot: string) {
  const data = dataIn(text);
  const { title, plant } = isGroup(data) ? data : {};
  return {
    title: typeof title === 'string' && title !== '' ? title : slot,
    plant: typeof plant === 'string' ? plant : '',
  };
}
