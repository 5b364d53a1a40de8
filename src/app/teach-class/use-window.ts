import { type RefObject, useCallback, useEffect, useRef, useState } from 'react';
import { windowOf } from './tile-layout.ts';

interface Sight {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly scrolledPx: number;
}

export interface GridWindow {
  readonly host: RefObject<HTMLDivElement | null>;
  readonly columns: number;
  readonly rows: number;
  readonly from: number;
  readonly to: number;
  /** Brings a place into sight. */
  show(place: number): void;
}

/** A grid of which only what is in sight is drawn: a thousand seats cost what thirty do. */
export function useGridWindow(count: number, leastPx: number, rowPx: number): GridWindow {
  const host = useRef<HTMLDivElement>(null);
  const [sight, setSight] = useState<Sight>({ widthPx: 0, heightPx: 0, scrolledPx: 0 });
  useEffect(() => {
    const element = host.current;
    if (element === null) return;
    const look = () => {
      const { clientWidth: widthPx, clientHeight: heightPx, scrollTop: scrolledPx } = element;
      setSight((before) =>
        before.widthPx === widthPx &&
        before.heightPx === heightPx &&
        before.scrolledPx === scrolledPx
          ? before
          : { widthPx, heightPx, scrolledPx },
      );
    };
    const observer = new ResizeObserver(look);
    observer.observe(element);
    element.addEventListener('scroll', look, { passive: true });
    look();
    return () => {
      observer.disconnect();
      element.removeEventListener('scroll', look);
    };
  }, []);
  const columns = Math.max(1, Math.floor(sight.widthPx / leastPx));
  const rows = Math.ceil(count / columns);
  const show = useCallback(
    (place: number) => {
      const element = host.current;
      if (element === null) return;
      const topPx = Math.floor(place / columns) * rowPx;
      if (topPx < element.scrollTop) element.scrollTop = topPx;
      const bottomPx = topPx + rowPx;
      if (bottomPx > element.scrollTop + element.clientHeight) {
        element.scrollTop = bottomPx - element.clientHeight;
      }
    },
    [columns, rowPx],
  );
  return { host, columns, rows, ...windowOf(rows, rowPx, sight.scrolledPx, sight.heightPx), show };
}
