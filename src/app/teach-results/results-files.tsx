import { useState } from 'react';
import { say } from '../../i18n/index.ts';
import { type ClassResult, classCsv, classXapi, practiceNodes } from '../../records/class/index.ts';
import { XAPI_DEFAULTS } from '../../records/index.ts';
import { classResultWords, practicePages, practiceWords } from '../../wording/class/index.ts';
import { Marked } from '../teach-paper/marked.tsx';
import { saveFile } from '../teach-paper/save-file.ts';
import { whenText } from './when-text.ts';

interface Props {
  readonly id: string;
  readonly title: string;
  readonly results: readonly ClassResult[];
}

/** The results to take away: a table, statements, and a page a learner to print. */
export function ResultsFiles({ id, title, results }: Props) {
  const [names, setNames] = useState(true);
  const [said, setSaid] = useState('');
  const save = (file: Parameters<typeof saveFile>[0]) => {
    saveFile(file);
    setSaid(say('teach-results.saved', { file: file.name }));
  };
  const pages = practicePages(results, {
    classTitle: title,
    printed: whenText(Date.now()),
    whenOf: whenText,
  });
  return (
    <section className="results-files" aria-labelledby="results-files-title">
      <h2 id="results-files-title">{say('teach-results.take-away')}</h2>
      <div className="buttons">
        <button
          type="button"
          className="button"
          onClick={() => save(classCsv(results, classResultWords().columns))}
        >
          {say('teach-results.csv')}
        </button>
        <button
          type="button"
          className="button"
          onClick={() => {
            const { homepage, version } = XAPI_DEFAULTS;
            const settings = { homepage, version, classId: id, title, names };
            save(classXapi(results, settings, classResultWords()));
          }}
        >
          {say('teach-results.xapi')}
        </button>
        <button type="button" className="button" onClick={() => print()}>
          {say('teach-results.print')}
        </button>
        <p role="status">{said}</p>
      </div>
      <label className="check">
        <input
          type="checkbox"
          checked={names}
          onChange={({ target }) => setNames(target.checked)}
        />
        <span>{say('teach-results.names')}</span>
      </label>
      <details className="practice-preview">
        <summary>{say('teach-results.preview')}</summary>
        <p className="quiet">{say('teach-results.print.about')}</p>
      </details>
      <article className="practice-record">
        <Marked nodes={practiceNodes(pages, practiceWords())} />
      </article>
    </section>
  );
}
