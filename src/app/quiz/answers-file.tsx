import { useState } from 'react';
import { say } from '../../i18n/index.ts';
import { EraseButton } from '../front/erase-button.tsx';
import { FileButton } from '../front/file-button.tsx';
import { saveFile } from '../teach-paper/save-file.ts';
import { importWords } from './import-words.ts';
import type { QuizDevice } from './use-quiz-device.ts';
import { type ResultFormat, useResultExport } from './use-result-export.ts';

const TABLES = ['csv', 'xapi'] as const;

/** To take the answers elsewhere, to bring them in, and to erase them. */
export function AnswersFile({ device }: { readonly device: QuizDevice }) {
  const [said, setSaid] = useState('');
  const { kept, answers } = device;
  const { wording, begin, enough } = useResultExport(setSaid);
  const exportAs = (format: ResultFormat) => {
    if (wording === null) begin(format, kept.record);
  };
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
        {TABLES.map((format) => (
          <button
            key={format}
            type="button"
            className="button"
            disabled={isEmpty}
            aria-disabled={wording !== null}
            onClick={() => exportAs(format)}
          >
            {say(`quiz.export.${format}`)}
          </button>
        ))}
        <FileButton
          label={say('quiz.import')}
          onFile={(file) =>
            void device.importFile(file).then((imported) => setSaid(importWords(imported)))
          }
        />
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
      {wording === null ? null : (
        <div className="quiz-wording">
          <progress max={Math.max(1, wording.of)} value={wording.done} aria-hidden="true" />
          <button type="button" className="button" onClick={enough}>
            {say('quiz.export.enough')}
          </button>
        </div>
      )}
      <p className="quiz-said" role="status">
        {wording === null ? said : say('quiz.export.wording', { ...wording })}
      </p>
    </>
  );
}
