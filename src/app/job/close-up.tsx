import { useEffect, useRef, useState } from 'react';
import { lookWords } from '../../bench/index.ts';
import { sayMessage } from '../../i18n/index.ts';
import { type CloseUpDrawing, loadCloseUp } from '../../view/index.ts';
import type { Surroundings } from '../settings/theme.ts';
import { viewMessage } from '../working/view-words.ts';
import { placeName } from './point-words.ts';
import type { Seen } from './use-looking.ts';

interface Props {
  readonly seen: Seen;
  readonly look: Surroundings;
}

/** What the eyes are on, drawn large. */
export function CloseUp({ seen, look }: Props) {
  const host = useRef<HTMLDivElement>(null);
  const [drawing, setDrawing] = useState<CloseUpDrawing | null>(null);
  useEffect(() => {
    let made: CloseUpDrawing | null = null;
    let wanted = true;
    loadCloseUp().then(
      ({ createCloseUp }) => {
        if (!wanted || host.current === null) return;
        made = createCloseUp(host.current, {
          message: viewMessage,
          title: ({ what }) => placeName(what),
          words: (reading) => lookWords(reading).map(sayMessage),
        });
        setDrawing(made);
      },
      () => undefined,
    );
    return () => {
      wanted = false;
      made?.destroy();
    };
  }, []);
  useEffect(() => drawing?.show(seen.reading), [drawing, seen]);
  useEffect(() => drawing?.setStill(look.reducedMotion), [drawing, look.reducedMotion]);
  return (
    <figure className="close-up">
      <figcaption>{placeName(seen.what)}</figcaption>
      <div ref={host} />
    </figure>
  );
}
