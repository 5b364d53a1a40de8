import { useState } from 'react';
import { say, sayWord } from '../../i18n/index.ts';
import { exerciseTitle } from '../library/exercises.ts';
import { historyRows, type QuizRow } from './history-rows.ts';
import type { KeptResult } from './result-record.ts';
import { conductWords, foundWords, helpWords, pathWords } from './result-words.ts';
import { dayOf, skillName } from './skill-words.ts';

/** So many are shown at first. */
const FEW = 8;
const COLUMNS = ['when', 'what', 'found', 'path', 'conduct', 'help'] as const;

/** Every result with its parts, the latest first. */
export function ResultHistory({ results }: { readonly results: readonly KeptResult[] }) {
  const [all, setAll] = useState(false);
  const rows = historyRows(results);
  if (rows.length === 0) return <p className="choices-lead">{say('learner.history.none')}</p>;
  return (
    <>
      <table className="learner-table learner-history">
        <thead>
          <tr>
            {COLUMNS.map((column) => (
              <th scope="col" key={column}>
                {say(`learner.history.${column}`)}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {(all ? rows : rows.slice(0, FEW)).map((row) =>
            row.kind === 'questions' ? (
              <QuestionsRow key={`quiz ${row.startedISO}`} row={row} />
            ) : (
              <Row key={`${row.kind} ${row.id} ${row.startedISO}`} result={row} />
            ),
          )}
        </tbody>
      </table>
      {all || rows.length <= FEW ? null : (
        <p className="learner-more">
          <button type="button" className="button" onClick={() => setAll(true)}>
            {say('learner.history.more', { count: rows.length })}
          </button>
        </p>
      )}
    </>
  );
}

/** A quiz has a verdict alone: no way to a cause, nothing done, no help. */
function QuestionsRow({ row }: { readonly row: QuizRow }) {
  const { atISO, skills, right, count } = row;
  return (
    <tr>
      <td>{dayOf(atISO)}</td>
      <th scope="row">
        {say('learner.history.quiz')}
        <span className="quiet">{skills.map(skillName).join(', ')}</span>
      </th>
      <td data-column={say('learner.history.found')}>
        {say('learner.found.quiz', { right, count })}
      </td>
      {(['path', 'conduct', 'help'] as const).map((column) => (
        <td key={column} data-column={say(`learner.history.${column}`)} data-empty={true}>
          –
        </td>
      ))}
    </tr>
  );
}

function Row({ result }: { readonly result: KeptResult }) {
  const cells = {
    found: foundWords(result),
    path: pathWords(result),
    conduct: conductWords(result),
    help: helpWords(result),
  };
  return (
    <tr>
      <td>{dayOf(result.atISO)}</td>
      <th scope="row">
        {titleOf(result)}
        <span className="quiet">
          {sayWord('job.kind', result.kind)}: {result.skills.map(skillName).join(', ')}
        </span>
      </th>
      {(['found', 'path', 'conduct', 'help'] as const).map((column) => (
        <td
          key={column}
          data-column={say(`learner.history.${column}`)}
          data-empty={cells[column] === ''}
          data-wrong={column === 'conduct' && result.conduct === 'unsafe'}
        >
          {cells[column] === '' ? '–' : cells[column]}
        </td>
      ))}
    </tr>
  );
}

function titleOf({ kind, id }: KeptResult): string {
  return kind === 'quiz' ? id : (exerciseTitle(kind, id) ?? id);
}
