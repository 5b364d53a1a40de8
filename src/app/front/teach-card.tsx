import type { ReactNode } from 'react';

interface Props {
  readonly href: string;
  readonly title: string;
  readonly about: ReactNode;
  /** The first thing to do of its group. */
  readonly first?: boolean;
}

/** One thing to go to from the page for those who teach. */
export function TeachCard({ href, title, about, first = false }: Props) {
  return (
    <li>
      <a className="choice teach-card" data-first={first} href={href}>
        <strong>{title}</strong>
        <span>{about}</span>
      </a>
    </li>
  );
}
