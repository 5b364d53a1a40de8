import type { ReactNode } from 'react';
import { say, sayWord } from '../../i18n/index.ts';
import {
  type BoardRow,
  countRows,
  FILTERS,
  type Filter,
  ORDERS,
  type Order,
} from './board-rows.ts';

interface Props {
  readonly rows: readonly BoardRow[];
  readonly acts: ReactNode;
  readonly order: Order;
  readonly filter: Filter;
  readonly compact: boolean;
  readonly onOrder: (order: Order) => void;
  readonly onFilter: (filter: Filter) => void;
  readonly onCompact: (compact: boolean) => void;
}

/** How the board is put in order, and what of it is shown. */
export function BoardBar(props: Props) {
  const { rows, acts, order, filter, compact, onOrder, onFilter, onCompact } = props;
  const counts = countRows(rows);
  return (
    <div className="board-bar">
      <p className="board-counts">
        {say('teach-class.counts', { in: counts.in, stuck: counts.stuck, done: counts.done })}
        {counts.away === 0 ? '' : ` · ${say('teach-class.counts.away', { away: counts.away })}`}
      </p>
      {acts}
      <label>
        <span>{say('teach-class.order')}</span>
        <select value={order} onChange={({ target }) => onOrder(target.value as Order)}>
          {ORDERS.map((each) => (
            <option key={each} value={each}>
              {sayWord('teach-class.order', each)}
            </option>
          ))}
        </select>
      </label>
      <label>
        <span>{say('teach-class.filter')}</span>
        <select value={filter} onChange={({ target }) => onFilter(target.value as Filter)}>
          {FILTERS.map((each) => (
            <option key={each} value={each}>
              {sayWord('teach-class.filter', each)}
            </option>
          ))}
        </select>
      </label>
      <button
        type="button"
        className="button"
        aria-pressed={compact}
        onClick={() => onCompact(!compact)}
      >
        {say('teach-class.compact')}
      </button>
    </div>
  );
}
