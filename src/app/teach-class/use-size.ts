import { type RefObject, useEffect, useRef, useState } from 'react';

export interface Size {
  readonly widthPx: number;
  readonly heightPx: number;
}

/** How large an element is, as it changes. */
export function useSize(): {
  readonly host: RefObject<HTMLDivElement | null>;
  readonly size: Size;
} {
  const host = useRef<HTMLDivElement>(null);
  const [size, setSize] = useState<Size>({ widthPx: 0, heightPx: 0 });
  useEffect(() => {
    const element = host.current;
    if (element === null) return;
    const observer = new ResizeObserver(() =>
      setSize({ widthPx: element.clientWidth, heightPx: element.clientHeight }),
    );
    observer.observe(element);
    return () => observer.disconnect();
  }, []);
  return { host, size };
}
