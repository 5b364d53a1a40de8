import { useState } from 'react';
import { say } from '../../i18n/index.ts';
import { EraseButton } from '../front/erase-button.tsx';
import { FileButton } from '../front/file-button.tsx';
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
        <FileButton
          label={say('learner.import')}
          onFile={(file) =>
            void learner.importFile(file).then((imported) => setSaid(importWords(imported)))
          }
        />
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
