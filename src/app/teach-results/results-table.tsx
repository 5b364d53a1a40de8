import { useState } from 'react';
import { say } from '../../i18n/index.ts';
import { type ClassResult, inOrder } from '../../records/class/index.ts';
import { practiceLine } from '../../wording/class/index.ts';
import { whenText } from './when-text.ts';

const ORDERS = ['seat', 'name', 'outcome'] as const;
type Order = (typeof ORDERS)[number];

const BY: Readonly<Record<Order, (a: ClassResult, b: ClassResult) => number>> = {
  seat: inOrder,
  name: (a, b) => a.nickname.localeCompare(b.nickname) || inOrder(a, b),
  outcome: (a, b) => (b.outcome ?? -1) - (a.outcome ?? -1) || inOrder(a, b),
};

/** A row for each attempt; what there is to say of it stands below. */
export function ResultsTable({ results }: { readonly results: readonly ClassResult[] }) {
  const [order, setOrder] = useState<Order>('seat');
  const rows = [...results].sort(BY[order]);
  return (
    <section aria-labelledby="results-table-title">
      <h2 id="results-table-title">{say('teach-results.seat-by-seat')}</h2>
      <label className="field results-order">
        <span>{say('teach-results.order')}</span>
        <select value={order} onChange={({ target }) => setOrder(target.value as Order)}>
          {ORDERS.map((one) => (
            <option key={one} value={one}>
              {say(`teach-results.order.${one}`)}
            </option>
          ))}
        </select>
      </label>
      <section
        className="results-scroll"
        aria-labelledby="results-table-title"
        // biome-ignore lint/a11y/noNoninteractiveTabindex: keys can only scroll what has the focus
        tabIndex={0}
      >
        <table className="results-table">
          <thead>
            <tr>
              <th scope="col">{say('class-result.record.seat')}</th>
              <th scope="col">{say('class-result.record.learner')}</th>
              <th scope="col">{say('teach-results.handed-in')}</th>
              <th scope="col">{say('class-result.record.outcome')}</th>
              <th scope="col">{say('class-result.record.how')}</th>
              <th scope="col">{say('class-result.record.minutes')}</th>
            </tr>
          </thead>
          {rows.map((result) => (
            <ResultRows key={`${result.seat} ${result.attempt}`} result={result} />
          ))}
        </table>
      </section>
    </section>
  );
}

function ResultRows({ result }: { readonly result: ClassResult }) {
  const { seat, nickname, attempt, refused } = result;
  const line = practiceLine(result, whenText);
  const notes = [...line.conduct, ...line.remarks];
  return (
    <tbody data-refused={refused}>
      <tr>
        <th scope="row">{seat}</th>
        <td>{nickname}</td>
        <td>
          {line.when}
          {attempt > 1 ? (
            <span className="quiet"> {say('teach-results.attempt', { attempt })}</span>
          ) : null}
        </td>
        <td>
          {line.outcome}
          {refused ? (
            <strong className="results-refused"> {say('teach-results.refused')}</strong>
          ) : null}
        </td>
        <td>{line.how}</td>
        <td>{line.minutes}</td>
      </tr>
      {notes.length === 0 ? null : (
        <tr className="results-notes">
          <td />
          <td colSpan={5}>
            <ul>
              {notes.map((note) => (
                <li key={note}>{note}</li>
              ))}
            </ul>
          </td>
        </tr>
      )}
    </tbody>
  );
}
