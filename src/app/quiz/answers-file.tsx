import { useState } from 'react';
import { loadMessages, say } from '../../i18n/index.ts';
import { EraseButton } from '../front/erase-button.tsx';
import { settings } from '../settings/settings.ts';
import { saveFile } from '../teach-paper/save-file.ts';
import { importWords } from './import-words.ts';
import type { QuizDevice } from './use-quiz-device.ts';

/** To take the answers elsewhere, to bring them in, and to erase them. */
export function AnswersFile({ device }: { readonly device: QuizDevice }) {
  const [said, setSaid] = useState('');
  const { kept, answers } = device;
  const isEmpty = answers.length === 0 && kept.record.quizzes.length === 0;
  return (
    <>
      <p className="choices-lead">{say('quiz.file.lead')}</p>
      <div className="buttons quiz-file">
        <button
          type="button"
          className="button"
          disabled={isEmpty}
          onClick={() =>
            saveFile({
              name: 'flamewright-quiz.json',
              type: 'application/json',
              data: device.exportText(),
            })
          }
        >
          {say('quiz.export')}
        </button>
        <button
          type="button"
          className="button"
          disabled={isEmpty}
          onClick={() => void saveAs('csv', device).catch(() => setSaid(say('quiz.export.failed')))}
        >
          {say('quiz.export.csv')}
        </button>
        <button
          type="button"
          className="button"
          disabled={isEmpty}
          onClick={() =>
            void saveAs('xapi', device).catch(() => setSaid(say('quiz.export.failed')))
          }
        >
          {say('quiz.export.xapi')}
        </button>
        <label className="button file">
          {say('quiz.import')}
          <input
            type="file"
            accept="application/json,.json"
            className="for-readers"
            onChange={({ target }) => {
              const file = target.files?.[0];
              target.value = '';
              if (file === undefined) return;
              void device.importFile(file).then((imported) => setSaid(importWords(imported)));
            }}
          />
        </label>
        <EraseButton
          label={say('quiz.erase')}
          ask={say('quiz.erase-sure')}
          disabled={isEmpty && kept.trouble === null && !kept.aside}
          onSure={() => {
            device.erase();
            setSaid(say('quiz.erased'));
          }}
        />
      </div>
      <p className="quiz-said" role="status">
        {said}
      </p>
    </>
  );
}

/** The writers of other formats are fetched when one is wanted. */
async function saveAs(format: 'csv' | 'xapi', { kept }: QuizDevice): Promise<void> {
  const [records, { resultWords }] = await Promise.all([
    import('../../records/index.ts'),
    import('../../wording/index.ts'),
    loadMessages(['quiz-paper']),
  ]);
  const { answers, quizzes } = kept.record;
  // Without the items in words: ids, places of options and SI values stand alone.
  const items = new Map();
  if (format === 'csv') {
    saveFile(records.resultsCsv(answers, resultWords(items, settings.read().units)));
    return;
  }
  const finished = quizzes.map(({ startedISO }) => startedISO);
  saveFile(records.resultsXapi(answers, { ...records.XAPI_DEFAULTS, finished }, items));
}
