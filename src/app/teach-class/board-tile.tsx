import { memo } from 'react';
import { say } from '../../i18n/index.ts';
import type { BoardRow } from './board-rows.ts';
import { progressMarks } from './progress-marks.ts';
import { agoText, lastText, markText, quizText, seatName, stepText } from './seat-words.ts';

interface Props {
  readonly row: BoardRow;
  readonly id: string;
  readonly chosen: boolean;
  /** Where the keys are. */
  readonly current: boolean;
  readonly compact: boolean;
  readonly place: number;
  readonly of: number;
}

/** One seat, as an option of the board: how it stands, in words and by its edge. */
export const BoardTile = memo(function BoardTile(props: Props) {
  const { row, id, chosen, current, compact, place, of } = props;
  const { seat, state, standing } = row;
  const last = lastText(row);
  const mark = markText(row);
  return (
    // biome-ignore lint/a11y/useFocusableInteractive: the board has the focus and names its option
    <div
      role="option"
      id={id}
      className={compact ? 'board-row' : 'board-tile'}
      aria-selected={chosen}
      aria-posinset={place + 1}
      aria-setsize={of}
      data-seat={seat}
      data-standing={standing}
      data-current={current}
    >
      <span className="tile-seat">{seatName(row)}</span>
      <span className="tile-mark">{mark}</span>
      <span className="tile-step">{stepText(row)}</span>
      <span className="tile-time">
        {state === null || state.step === '' ? '' : agoText(state.stepS)}
      </span>
      <span className="tile-last">{last}</span>
      <span className="tile-notes">
        {state === null || state.step !== '' || state.answered === 0 ? null : (
          <span>{quizText(state)}</span>
        )}
        {state === null || state.suspects.length === 0 ? null : (
          <span className="tile-suspects">
            {say('teach-class.tile.suspects', { suspects: state.suspects.join(', ') })}
          </span>
        )}
        {state === null || state.flags === 0 ? null : (
          <span className="tile-flags">
            {say(state.flags === 1 ? 'teach-class.tile.flag' : 'teach-class.tile.flags', {
              count: state.flags,
            })}
          </span>
        )}
      </span>
      <Progress share={state?.progress ?? 0} stuck={standing === 'stuck'} />
    </div>
  );
});

function Progress({ share, stuck }: { readonly share: number; readonly stuck: boolean }) {
  const percent = Math.round(100 * share);
  return (
    <span className="tile-progress">
      <span className="for-readers">{say('teach-class.tile.progress', { percent })}</span>
      {progressMarks(share).map(({ place, filled, last }) => (
        <span
          key={place}
          aria-hidden="true"
          data-filled={filled}
          data-stuck={stuck && last ? true : undefined}
        />
      ))}
    </span>
  );
}
