import { type ReactNode, useEffect, useRef } from 'react';
import { pageChanges } from './use-route.ts';

interface Props {
  readonly className?: string;
  readonly children: ReactNode;
}

/** After a change of page a reader starts at its heading, as on a page freshly loaded. */
export function PageHeading({ className, children }: Props) {
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    if (pageChanges() > 0) heading.current?.focus({ preventScroll: true });
  }, []);
  return (
    <h1 ref={heading} tabIndex={-1} className={className}>
      {children}
    </h1>
  );
}
