import '../styles/working/ladder.css';
import { useEffect, useMemo, useState } from 'react';
import { say } from '../../i18n/index.ts';
import type { Item } from '../../quiz/index.ts';
import { type Ladder, loadLadder } from '../../view/index.ts';
import { LadderHost } from '../working/ladder-host.tsx';
import { SessionProvider, useFacts } from '../working/session-context.tsx';
import { viewMessage } from '../working/view-words.ts';
import { useItemRun } from './use-item-run.ts';
import { WhenRunning } from './when-running.tsx';

interface Props {
  readonly item: Item;
  readonly places: readonly string[];
}

/** As on paper: what is live would tell what a meter there would read. */
export function PaperLadder({ item, places }: Props) {
  const session = useItemRun(item);
  const [drawing, setDrawing] = useState<Ladder | null>(null);
  if (session === null) return null;
  return (
    <SessionProvider value={session}>
      <WhenRunning>
        <div className="item-ladder">
          <LadderHost
            follow={false}
            live={false}
            onDrawing={setDrawing}
            extra={drawing === null ? null : <Named drawing={drawing} places={places} />}
          />
        </div>
      </WhenRunning>
    </SessionProvider>
  );
}

/** A button for each place that the question names: it brings the place into view. */
function Named({
  drawing,
  places,
}: {
  readonly drawing: Ladder;
  readonly places: Props['places'];
}) {
  const { wiring } = useFacts();
  const [labels, setLabels] = useState<ReadonlyMap<string, string>>(new Map());
  const [shown, setShown] = useState<string | null>(null);
  useEffect(() => {
    let wanted = true;
    void loadLadder().then(({ ladderPlaces }) => {
      if (!wanted) return;
      setLabels(new Map(ladderPlaces(wiring, viewMessage).map(({ id, label }) => [id, label])));
    });
    return () => {
      wanted = false;
    };
  }, [wiring]);
  const known = useMemo(() => places.filter((id) => labels.has(id)), [places, labels]);
  return known.map((id) => (
    <button
      key={id}
      type="button"
      className="button"
      aria-pressed={id === shown}
      onClick={() => {
        drawing.showPlace(id);
        setShown(id);
      }}
    >
      {say('quiz.stem.ladder.show', { what: labels.get(id) ?? id })}
    </button>
  ));
}
