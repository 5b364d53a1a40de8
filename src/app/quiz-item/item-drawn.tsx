import { type ReactNode, useId, useState } from 'react';

interface Props {
  readonly title: string;
  readonly kind: 'chart' | 'trends' | 'ladder';
  readonly startsOpen?: boolean;
  /** Not there while it is folded away. */
  readonly children: ReactNode;
}

/** A drawing that can be folded away; its room is kept while it is not there yet. */
export function ItemDrawn({ title, kind, startsOpen = true, children }: Props) {
  const id = useId();
  const [open, setOpen] = useState(startsOpen);
  return (
    <section className="item-drawn" data-kind={kind} aria-labelledby={id}>
      <h2 id={id}>
        <button
          type="button"
          className="chart-fold"
          aria-expanded={open}
          onClick={() => setOpen(!open)}
        >
          {title}
          <svg width="12" height="12" viewBox="0 0 12 12" aria-hidden="true">
            <path
              d={open ? 'M2 4l4 4l4 -4' : 'M4 2l4 4l-4 4'}
              fill="none"
              stroke="currentColor"
              strokeWidth="2"
            />
          </svg>
        </button>
      </h2>
      {open ? <div className="item-drawn-room">{children}</div> : null}
    </section>
  );
}
