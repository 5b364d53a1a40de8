import { type ReactNode, useEffect, useRef } from 'react';
import { pageChanges } from '../shell/use-route.ts';

interface Props {
  /** What is shown; whenever it changes a reader starts here again. */
  readonly of: number;
  readonly children: ReactNode;
}

/** As the heading of a page, also where the page stays and its question changes. */
export function QuizHeading({ of, children }: Props) {
  const heading = useRef<HTMLHeadingElement>(null);
  const shown = useRef<number | null>(null);
  useEffect(() => {
    const isFirst = shown.current === null;
    if (shown.current === of) return;
    shown.current = of;
    if (isFirst && pageChanges() === 0) return;
    heading.current?.focus({ preventScroll: true });
    if (!isFirst) scrollTo(0, 0);
  }, [of]);
  return (
    <h1 ref={heading} tabIndex={-1}>
      {children}
    </h1>
  );
}
