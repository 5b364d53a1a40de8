import { useEffect, useRef } from 'react';
import { say } from '../../i18n/index.ts';
import type { PackageNow } from './use-package.ts';

const MEGABYTE = 1_000_000;

/** How far it is, and what came of it. */
export function MakingPackage({ now }: { readonly now: PackageNow }) {
  const place = useRef<HTMLDivElement>(null);
  const { is } = now;
  useEffect(() => {
    if (is !== 'none') place.current?.scrollIntoView({ block: 'nearest' });
  }, [is]);
  const failed = is === 'broken' || is === 'no list';
  return (
    <div className="paper-making" ref={place}>
      {now.is === 'fetching' ? (
        <progress max={now.of} value={now.done} aria-label={say('package.making.label')} />
      ) : null}
      <p role="status" className={failed ? 'invalid' : ''}>
        {statusOf(now)}
      </p>
    </div>
  );
}

function statusOf(now: PackageNow): string {
  switch (now.is) {
    case 'none':
      return '';
    case 'fetching':
      return say('package.making', { done: now.done, of: now.of });
    case 'packing':
      return say('package.packing');
    case 'saved':
      return say('package.saved', {
        file: now.file,
        megabytes: (now.bytes / MEGABYTE).toFixed(1),
      });
    case 'no list':
      return say('package.no-list');
    case 'broken':
      return say('package.broken');
  }
}
