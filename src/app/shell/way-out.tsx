import type { ReactNode } from 'react';
import { useWorkPlace } from '../work/work-place.ts';
import { packagedPage } from './packaged.ts';

interface Props {
  readonly className?: string;
  /** To a part of the page beyond the exercise. */
  readonly href: string;
  readonly children: ReactNode;
}

/** A link that leads away from an exercise; in a package there is nowhere to go, in a class its strip leads out. */
export function WayOut({ className, href, children }: Props) {
  const { isClass } = useWorkPlace();
  if (isClass || packagedPage() !== null) return null;
  return (
    <a className={className} href={href}>
      {children}
    </a>
  );
}
