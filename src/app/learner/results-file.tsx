import { useState } from 'react';
import { say } from '../../i18n/index.ts';
import { EraseButton } from '../front/erase-button.tsx';
import { importWords } from './issue-words.ts';
import type { LearnerMapOfDevice } from './use-learner-map.ts';

/** To take the results elsewhere, to bring them in, and to erase them. */
export function ResultsFile({ learner }: { readonly learner: LearnerMapOfDevice }) {
  const [said, setSaid] = useState('');
  const { kept } = learner;
  const isEmpty = kept.results.length === 0;
  return (
    <>
      <p className="choices-lead">{say('learner.file.lead')}</p>
      <div className="buttons learner-file">
        <button
          type="button"
          className="button"
          disabled={isEmpty}
          onClick={() => learner.exportAll()}
        >
          {say('learner.export')}
        </button>
        <label className="button file">
          {say('learner.import')}
          <input
            type="file"
            accept="application/json,.json"
            className="for-readers"
            onChange={({ target }) => {
              const file = target.files?.[0];
              target.value = '';
              if (file === undefined) return;
              void learner.importFile(file).then((imported) => setSaid(importWords(imported)));
            }}
          />
        </label>
        <EraseButton
          label={say('learner.erase')}
          ask={say('learner.erase-sure')}
          disabled={isEmpty && kept.trouble === null && !kept.aside}
          onSure={() => {
            learner.erase();
            setSaid(say('learner.erased'));
          }}
        />
      </div>
      <p className="learner-said" role="status">
        {said}
      </p>
    </>
  );
}
