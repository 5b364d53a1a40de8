import { useEffect, useState } from 'react';
import { parseRoute, type Route } from './route.ts';

let changes = 0;

/** How often the page has changed since it was loaded. */
export function pageChanges(): number {
  return changes;
}

export function useRoute(): Route {
  const [route, setRoute] = useState(() => parseRoute(location.hash));
  useEffect(() => {
    const renew = (): void => {
      changes += 1;
      setRoute(parseRoute(location.hash));
      scrollTo(0, 0);
    };
    addEventListener('hashchange', renew);
    return () => removeEventListener('hashchange', renew);
  }, []);
  return route;
}
