import { useEffect, useState } from 'react';
import { packagedPage } from './packaged.ts';
import { parseRoute, type Route } from './route.ts';

let changes = 0;

/** How often the page has changed since it was loaded. */
export function pageChanges(): number {
  return changes;
}

export function useRoute(): Route {
  const [route, setRoute] = useState(here);
  useEffect(() => {
    const renew = (): void => {
      changes += 1;
      setRoute(here());
      scrollTo(0, 0);
    };
    addEventListener('hashchange', renew);
    return () => removeEventListener('hashchange', renew);
  }, []);
  return route;
}

function here(): Route {
  const route = parseRoute(location.hash);
  return packagedPage()?.routeFor(route) ?? route;
}
