import { say, sayWord } from '../../i18n/index.ts';
import { saveFile } from '../teach-paper/save-file.ts';
import { beginFile } from './begin-file.ts';
import type { KeepTrouble, OwnFile } from './own-files.ts';

interface Props {
  readonly file: OwnFile;
  readonly text: string;
  readonly readOnly: boolean;
  readonly said: string;
  readonly trouble: KeepTrouble | null;
  readonly canUndo: boolean;
  readonly canRedo: boolean;
  readonly onUndo: () => void;
  readonly onRedo: () => void;
  readonly onSave: () => void;
  /** Null where there is nothing to be run. */
  readonly onRun: (() => void) | null;
}

/** What can be done with the file as a whole, and how it stands. */
export function EditorBar(props: Props) {
  const { file, text, readOnly, said, trouble, canUndo, canRedo, onUndo, onRedo, onSave, onRun } =
    props;
  const isSaved = file.savedText === text;
  return (
    <div className="author-bar">
      <p className="author-kind">
        {sayWord('author.kind', file.kind)}{' '}
        <span className="quiet">
          {readOnly
            ? say('author.shipped')
            : isSaved
              ? say('author.state.saved')
              : say(file.savedText === null ? 'author.state.new' : 'author.state.changed')}
        </span>
      </p>
      <div className="buttons">
        {readOnly ? (
          <button
            type="button"
            className="button primary"
            onClick={() => beginFile(file.kind, `${file.slot}-own`, text)}
          >
            {say('author.copy-to-change')}
          </button>
        ) : (
          <>
            <button type="button" className="button primary" onClick={onSave}>
              {say('author.save')}
            </button>
            <button type="button" className="button" disabled={!canUndo} onClick={onUndo}>
              {say('author.undo')}
            </button>
            <button type="button" className="button" disabled={!canRedo} onClick={onRedo}>
              {say('author.redo')}
            </button>
            <button
              type="button"
              className="button"
              onClick={() => beginFile(file.kind, `${file.slot}-copy`, text)}
            >
              {say('author.copy')}
            </button>
          </>
        )}
        {onRun === null ? null : (
          <button type="button" className="button" onClick={onRun}>
            {say('author.preview.run')}
          </button>
        )}
        <button type="button" className="button" onClick={() => saveFile(exported(file, text))}>
          {say('author.export')}
        </button>
      </div>
      <p className="said" role="status">
        {isSaved || readOnly ? said : ''}
      </p>
      {trouble === null ? null : (
        <p className="author-trouble" role="alert">
          {say(trouble === 'no room' ? 'author.keep.no-room' : 'author.keep.refused')}
        </p>
      )}
    </div>
  );
}

export function exported({ slot }: Pick<OwnFile, 'slot'>, text: string) {
  return { name: `${slot}.yaml`, type: 'application/yaml', data: text };
}
