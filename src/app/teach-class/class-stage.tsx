import { useCallback } from 'react';
import { say } from '../../i18n/index.ts';
import type { Session } from '../session/session-types.ts';
import type { Surroundings } from '../settings/theme.ts';
import { Board } from './board.tsx';
import { CompareRuns } from './compare-runs.tsx';
import { LeadClock } from './lead-clock.tsx';
import { RunView } from './run-view.tsx';
import { SeatRun } from './seat-run.tsx';
import { useChosenSeats, useTeach } from './teach-context.ts';

/** What stands in the middle of the page. */
export type Shown =
  | { readonly is: 'board' }
  /** The one plant. */
  | { readonly is: 'plant' }
  | { readonly is: 'run'; readonly seat: number }
  | { readonly is: 'compare'; readonly seats: readonly [number, number] };

interface Props {
  readonly look: Surroundings;
  readonly shown: Shown;
  readonly onShow: (shown: Shown) => void;
}

export function ClassStage({ look, shown, onShow }: Props) {
  const { own, session, viewed } = useTeach();
  const toBoard = useCallback(() => onShow({ is: 'board' }), [onShow]);
  const view = useCallback((run: Session | null) => viewed.write({ session: run }), [viewed]);
  if (shown.is === 'run') {
    return <SeatRun key={shown.seat} seat={shown.seat} look={look} onBack={toBoard} onRun={view} />;
  }
  if (shown.is === 'compare') return <CompareRuns seats={shown.seats} onBack={toBoard} />;
  return (
    <>
      {own.way === 'together' ? (
        <div className="stage-ways">
          <div className="segments">
            {(['plant', 'board'] as const).map((is) => (
              <button
                key={is}
                type="button"
                className="button"
                aria-pressed={shown.is === is}
                onClick={() => onShow({ is })}
              >
                {say(`teach-class.stage.${is}`)}
              </button>
            ))}
          </div>
        </div>
      ) : null}
      {shown.is === 'plant' && session !== null ? (
        <RunView session={session} look={look} hands={true} head={<LeadClock />} />
      ) : null}
      {shown.is === 'board' ? (
        <Board
          onOpenRun={(seat) => canOpen(own) && onShow({ is: 'run', seat })}
          acts={<OpenRuns onShow={onShow} />}
        />
      ) : null}
    </>
  );
}

function canOpen({ way, kind }: { readonly way: string; readonly kind: string }): boolean {
  return way === 'own copies' && kind !== 'quiz';
}

/** What can be opened of the seats chosen: one run, or two beside each other. */
function OpenRuns({ onShow }: Pick<Props, 'onShow'>) {
  const { own } = useTeach();
  const [first, second, ...others] = useChosenSeats();
  if (!canOpen(own)) return null;
  const one = first !== undefined && second === undefined;
  const two = second !== undefined && others.length === 0;
  return (
    <div className="open-runs">
      <button
        type="button"
        className="button"
        disabled={!one}
        onClick={() => first !== undefined && onShow({ is: 'run', seat: first })}
      >
        {one ? say('teach-class.run.open', { seat: first }) : say('teach-class.run.open-one')}
      </button>
      <button
        type="button"
        className="button"
        disabled={!two}
        onClick={() =>
          first !== undefined &&
          second !== undefined &&
          onShow({ is: 'compare', seats: [first, second] })
        }
      >
        {two
          ? say('teach-class.compare.open', { first: first ?? 0, second })
          : say('teach-class.compare.open-two')}
      </button>
    </div>
  );
}
