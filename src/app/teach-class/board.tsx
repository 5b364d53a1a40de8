import {
  type KeyboardEvent,
  type MouseEvent,
  type ReactNode,
  useId,
  useMemo,
  useState,
} from 'react';
import { say } from '../../i18n/index.ts';
import { useStore } from '../session/store.ts';
import { BoardBar } from './board-bar.tsx';
import { type BoardKey, keyOnBoard } from './board-keys.ts';
import { type BoardRow, type Filter, type Order, ordered } from './board-rows.ts';
import { BoardTile } from './board-tile.tsx';
import { NOBODY, pickAll, pickSeat } from './selection.ts';
import { useRows, useTeach } from './teach-context.ts';
import { useGridWindow } from './use-window.ts';

interface Props {
  readonly onOpenRun: (seat: number) => void;
  /** What can be done with the seats chosen. */
  readonly acts?: ReactNode;
}

/** With more seats tiles would only be scrolled past. */
const MANY = 60;
const TILE_PX = { wide: 236, high: 168 };
const ROW_PX = { wide: 900, high: 48 };

/** All seats: chosen by click or key, a range with shift; only what is in sight is drawn. */
export function Board({ onOpenRun, acts = null }: Props) {
  const rows = useRows();
  const { selection } = useTeach();
  const { seats: chosen } = useStore(selection);
  const [order, setOrder] = useState<Order>('seat');
  const [filter, setFilter] = useState<Filter>('everyone');
  const [dense, setDense] = useState<boolean | null>(null);
  const [current, setCurrent] = useState<number | null>(null);
  const compact = dense ?? rows.length > MANY;
  const size = compact ? ROW_PX : TILE_PX;
  const shown = useMemo(() => ordered(rows, order, filter), [rows, order, filter]);
  const grid = useGridWindow(shown.length, size.wide, size.high);
  const id = useId();
  const places = shown.map(({ seat }) => seat);
  const at = current === null ? -1 : places.indexOf(current);

  const onClick = ({ target, shiftKey }: MouseEvent) => {
    const option = (target as HTMLElement).closest<HTMLElement>('[data-seat]');
    if (option === null) return;
    const seat = Number(option.dataset.seat);
    setCurrent(seat);
    selection.write(pickSeat(selection.read(), seat, shiftKey ? 'range' : 'toggle', places));
  };
  const onKeyDown = (event: KeyboardEvent) => {
    const does = keyOnBoard(event, at, places.length, grid.columns);
    if (does === null) return;
    event.preventDefault();
    act(does);
  };
  const act = (does: BoardKey) => {
    if (does.does === 'all') selection.write(pickAll(places));
    if (does.does === 'none') selection.write(NOBODY);
    const seat = places[does.to];
    if (seat === undefined) return;
    if (does.does === 'open') onOpenRun(seat);
    if (does.does === 'move' || does.does === 'range') {
      // A range begins where the keys were.
      if (does.does === 'range') {
        const from = selection.read().anchor ?? current ?? seat;
        const before = { ...selection.read(), anchor: from };
        selection.write(pickSeat(before, seat, 'range', places));
      }
      setCurrent(seat);
      grid.show(does.to);
    }
    if (does.does === 'toggle') {
      selection.write(pickSeat(selection.read(), seat, 'toggle', places));
    }
  };

  const first = grid.from * grid.columns;
  const inSight = shown.slice(first, grid.to * grid.columns);
  return (
    <section className="board" aria-label={say('teach-class.board')}>
      <BoardBar
        rows={rows}
        acts={acts}
        order={order}
        filter={filter}
        compact={compact}
        onOrder={setOrder}
        onFilter={setFilter}
        onCompact={setDense}
      />
      {shown.length === 0 ? (
        <p className="board-empty quiet">
          {say(rows.length === 0 ? 'teach-class.board.nobody' : 'teach-class.board.none-such')}
        </p>
      ) : null}
      <div
        className="board-scroll"
        ref={grid.host}
        role="listbox"
        tabIndex={0}
        aria-multiselectable="true"
        aria-label={say('teach-class.board.seats')}
        aria-activedescendant={at < 0 ? undefined : optionId(id, current)}
        onClick={onClick}
        onKeyDown={onKeyDown}
        onFocus={() => {
          if (at < 0 && places[0] !== undefined) setCurrent(places[0]);
        }}
      >
        <div
          className="board-room"
          role="presentation"
          style={{ height: grid.rows * size.high, '--columns': grid.columns } as object}
        >
          <div
            className="board-grid"
            role="presentation"
            style={{ transform: `translateY(${grid.from * size.high}px)` }}
          >
            {inSight.map((row: BoardRow, place) => (
              <BoardTile
                key={row.seat}
                row={row}
                id={optionId(id, row.seat)}
                chosen={chosen.includes(row.seat)}
                current={row.seat === current}
                compact={compact}
                place={first + place}
                of={shown.length}
              />
            ))}
          </div>
        </div>
      </div>
    </section>
  );
}

function optionId(board: string, seat: number | null): string {
  return `${board}-seat-${seat}`;
}
