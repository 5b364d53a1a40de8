import type { ReactNode } from 'react';

interface Props {
  readonly className: string;
  readonly labelledBy: string;
  /** The step it is about, for tests and for whoever takes pictures. */
  readonly step: string;
  readonly children: ReactNode;
}

/** A part of the page that may have to scroll, and so must be reachable by keyboard. */
export function ScrollingSection({ className, labelledBy, step, children }: Props) {
  return (
    <section
      className={className}
      aria-labelledby={labelledBy}
      data-step={step}
      // biome-ignore lint/a11y/noNoninteractiveTabindex: keys can only scroll what has the focus
      tabIndex={0}
    >
      {children}
    </section>
  );
}
