import { memo } from 'react';
import { say } from '../../i18n/index.ts';
import { useStorePart } from '../session/store.ts';
import type { BoardRow } from './board-rows.ts';
import type { BoardWatch } from './board-watch.ts';
import { progressMarks } from './progress-marks.ts';
import { markText, seatName, stepShort } from './seat-words.ts';
import { countSteps } from './step-counts.ts';
import { LEAST_READABLE_PX, layoutTiles } from './tile-layout.ts';
import { useSize } from './use-size.ts';

/** The board on a wall: as large as the number of seats lets it be; too many are counted by step. */
export function ProjectedBoard({ board }: { readonly board: BoardWatch }) {
  const rows = useStorePart(board, (all) => all);
  const { host, size } = useSize();
  const { columns, fontPx } = layoutTiles(Math.max(1, rows.length), size.widthPx, size.heightPx);
  const style = { '--columns': columns, fontSize: `${fontPx.toFixed(1)}px` } as object;
  return (
    <div className="projected-board" ref={host}>
      {rows.length === 0 ? (
        <p className="projected-none">{say('teach-class.board.nobody')}</p>
      ) : null}
      {size.widthPx === 0 || rows.length === 0 ? null : fontPx < LEAST_READABLE_PX ? (
        <StepCounts rows={rows} />
      ) : (
        <ul className="projected-tiles" style={style}>
          {rows.map((row) => (
            <ProjectedTile key={row.seat} row={row} />
          ))}
        </ul>
      )}
    </div>
  );
}

const ProjectedTile = memo(function ProjectedTile({ row }: { readonly row: BoardRow }) {
  const { standing, state } = row;
  const mark = standing === 'away' || standing === 'done' ? markText(row) : '';
  return (
    <li data-standing={standing}>
      <span className="projected-seat">{seatName(row)}</span>
      <span className="projected-step">{mark === '' ? stepShort(row) : mark}</span>
      <span className="tile-progress" aria-hidden="true">
        {progressMarks(state?.progress ?? 0).map(({ place, filled }) => (
          <span key={place} data-filled={filled} />
        ))}
      </span>
    </li>
  );
});

function StepCounts({ rows }: { readonly rows: readonly BoardRow[] }) {
  const counts = countSteps(rows.map(stepShort));
  const most = Math.max(1, ...counts.map(({ count }) => count));
  return (
    <ul className="projected-counts">
      {counts.map(({ name, count }) => (
        <li key={name}>
          <span>{name}</span>
          <meter min={0} max={most} value={count} aria-label={name}>
            {count}
          </meter>
          <strong>{count}</strong>
        </li>
      ))}
    </ul>
  );
}
