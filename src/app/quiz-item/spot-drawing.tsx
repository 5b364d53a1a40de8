import { useCallback, useEffect, useMemo, useRef, useState } from 'react';
import { say } from '../../i18n/index.ts';
import type { ItemTag, Schematic } from '../../view/index.ts';
import { frameAt } from '../session/frame-history.ts';
import type { Session } from '../session/session-types.ts';
import type { Surroundings } from '../settings/theme.ts';
import { SchematicHost } from '../working/schematic-host.tsx';
import { SessionProvider, useSession } from '../working/session-context.tsx';

interface Props {
  readonly look: Surroundings;
  /** Items of the drawing that can be answered. */
  readonly spots: readonly string[];
  readonly letters: readonly string[];
  readonly chosen: number | null;
  /** The answer that has the focus in the list. */
  readonly pointed: number | null;
  readonly onPick: (spot: string, name: string) => void;
  readonly onList: () => void;
  readonly onDrawing: (drawing: Schematic | null) => void;
}

/** The plant as it stands before the start, so that it gives nothing away; answers by their letters. */
export function SpotDrawing(props: Props) {
  const { look, spots, letters, chosen, pointed, onPick, onList, onDrawing } = props;
  const session = useSession();
  const atRest = useMemo(() => atFirstFrame(session), [session]);
  const [drawing, setDrawing] = useState<Schematic | null>(null);
  const pick = useRef(onPick);
  useEffect(() => {
    pick.current = onPick;
  });
  const take = useCallback(
    (schematic: Schematic | null) => {
      schematic?.onPick((spot) => {
        if (spot === null) return;
        const name = schematic.items().find(({ id }) => id === spot)?.name ?? spot;
        pick.current(spot, name);
      });
      setDrawing(schematic);
      onDrawing(schematic);
    },
    [onDrawing],
  );
  const tags = useMemo(
    (): ItemTag[] =>
      spots.map((item, place) => {
        const letter = letters[place] ?? '';
        return { item, text: place === chosen ? say('quiz.respond.spot.tag', { letter }) : letter };
      }),
    [spots, letters, chosen],
  );
  const ringed = spots[pointed ?? chosen ?? -1] ?? null;
  useEffect(() => drawing?.highlight(ringed), [drawing, ringed]);
  return (
    <SessionProvider value={atRest}>
      <div
        className="item-spot-drawing"
        // The pointer takes the ring along while it is over the drawing.
        onPointerLeave={() => drawing?.highlight(ringed)}
      >
        <SchematicHost look={look} eyesOnly={true} tags={tags} onList={onList} onDrawing={take} />
      </div>
    </SessionProvider>
  );
}

/** The same run, of which the drawing sees only the first moment. */
function atFirstFrame(session: Session): Session {
  return {
    ...session,
    onMoment: (listener) =>
      session.onMoment((moment) => {
        const history = session.history();
        const first = history === null ? null : frameAt(history, 0);
        if (first === null) return;
        listener({ ...moment, previous: first, next: first, blend: 0, tS: 0, running: false });
      }),
  };
}
