import '../styles/job/forms.css';
import '../styles/practice-record.css';
import '../styles/teach-results.css';
import { say, sayWord } from '../../i18n/index.ts';
import { FrontFrame } from '../front/front-frame.tsx';
import { PageHeading } from '../shell/page-heading.tsx';
import { hrefOf } from '../shell/route.ts';
import { KeyField } from '../teach-class/key-field.tsx';
import type { ResultsOfClass } from './ask-results.ts';
import { ClassSummaryPart } from './class-summary.tsx';
import { KeepingForm } from './keeping-form.tsx';
import { ResultsFiles } from './results-files.tsx';
import { ResultsTable } from './results-table.tsx';
import { type ResultsNow, useResults } from './use-results.ts';
import { whenText } from './when-text.ts';

/** What came of a class: at a glance, seat by seat, to take away, and how long it is kept. */
export function ResultsPage({ id }: { readonly id: string }) {
  const now = useResults(id);
  const { asked } = now;
  return (
    <FrontFrame>
      <a className="back" href={hrefOf({ page: 'classes' })}>
        ← {say('app.teach.open')}
      </a>
      <PageHeading>{say('teach-results.title')}</PageHeading>
      {asked === null ? <p className="quiet">{say('teach-results.asking')}</p> : null}
      {asked?.ok === false ? (
        <>
          <p className="invalid" role="alert">
            {say(`teach-results.trouble.${asked.trouble}`, { detail: asked.detail })}
          </p>
          {asked.trouble === 'not allowed' ? <KeyField wrong={false} onKey={now.again} /> : null}
          <button type="button" className="button" onClick={now.again}>
            {say('teach-results.again')}
          </button>
        </>
      ) : null}
      {asked?.ok === true ? <Results of={asked.value} now={now} /> : null}
    </FrontFrame>
  );
}

function Results({ of, now }: { readonly of: ResultsOfClass; readonly now: ResultsNow }) {
  const { line, results, waiting } = of;
  const { id, title, kind, way, phase, openedMs, closedMs, seats } = line;
  return (
    <div className="class-results">
      <div className="results-head">
        <p className="front-lead">
          <strong>{title}</strong> · {sayWord('class-result.kind', kind)} ·{' '}
          {sayWord('teach-class.way', way)}
        </p>
        <p className="quiet">
          {say('teach-results.opened', { when: whenText(openedMs), seats })}{' '}
          {closedMs === null
            ? say('teach-results.not-closed')
            : say('teach-results.closed', { when: whenText(closedMs) })}
        </p>
        <div className="buttons">
          {phase === 'closed' ? null : (
            <a className="button" href={hrefOf({ page: 'class', id })}>
              {say('teach-results.to-class')}
            </a>
          )}
          <button type="button" className="button" onClick={now.again}>
            {say('teach-results.again')}
          </button>
          {waiting === 0 ? null : (
            <button type="button" className="button" onClick={now.judge}>
              {say('teach-results.judge', { count: waiting })}
            </button>
          )}
        </div>
        <p className="quiet">{say('teach-results.judged-by')}</p>
      </div>
      {results.length === 0 ? (
        <p>{say('teach-results.none')}</p>
      ) : (
        <>
          <ClassSummaryPart results={results} seats={seats} />
          <ResultsTable results={results} />
          <ResultsFiles id={id} title={title} results={results} />
        </>
      )}
      <KeepingForm line={line} onChanged={now.again} />
    </div>
  );
}
