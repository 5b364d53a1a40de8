import { type RefObject, useEffect, useRef, useState } from 'react';

/** What every drawing of the view can do, whatever it shows. */
export interface ViewObject {
  resize(): void;
  destroy(): void;
}
export type ViewPhase = 'loading' | 'shown' | 'failed';

/**
 * Keeps a drawing in a host element for as long as `key` stays the same: makes it, follows
 * the host's size, takes it down. React only hears that it stands, or that it could not.
 */
export function useViewObject<T extends ViewObject>(
  key: string,
  make: (host: HTMLElement) => Promise<T>,
  attach: (object: T) => () => void,
): {
  readonly host: RefObject<HTMLDivElement | null>;
  readonly object: T | null;
  readonly phase: ViewPhase;
  /** Why it could not be made; for whoever mends it. */
  readonly reason: string;
} {
  const host = useRef<HTMLDivElement>(null);
  const [object, setObject] = useState<T | null>(null);
  const [phase, setPhase] = useState<ViewPhase>('loading');
  const [reason, setReason] = useState('');
  // biome-ignore lint/correctness/useExhaustiveDependencies: `key` says when to make it anew
  useEffect(() => {
    const element = host.current;
    if (element === null) return;
    let alive = true;
    let undo: (() => void) | null = null;
    setPhase('loading');
    make(element).then(
      (made) => {
        if (!alive) {
          made.destroy();
          return;
        }
        const observer = new ResizeObserver(() => made.resize());
        observer.observe(element);
        const detach = attach(made);
        undo = () => {
          observer.disconnect();
          detach();
          made.destroy();
        };
        setObject(made);
        setPhase('shown');
      },
      (error: unknown) => {
        if (!alive) return;
        setReason(String(error));
        setPhase('failed');
      },
    );
    return () => {
      alive = false;
      setObject(null);
      undo?.();
    };
  }, [key]);
  return { host, object, phase, reason };
}
