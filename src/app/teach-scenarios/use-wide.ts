import { useSyncExternalStore } from 'react';

/** Room for the text and the form beside each other. */
const WIDE = '(min-width: 72rem)';

export function useWide(): boolean {
  return useSyncExternalStore(
    (changed) => {
      const query = matchMedia(WIDE);
      query.addEventListener('change', changed);
      return () => query.removeEventListener('change', changed);
    },
    () => matchMedia(WIDE).matches,
  );
}
