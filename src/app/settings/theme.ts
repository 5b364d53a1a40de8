import { createStore, type Store } from '../session/store.ts';
import { settings } from './settings.ts';

export interface Surroundings {
  readonly theme: 'light' | 'dark';
  readonly reducedMotion: boolean;
}

/** What the page looks like now: the reader's choice, else what the system asks for. */
export function followSurroundings(): Store<Surroundings> {
  const dark = matchMedia('(prefers-color-scheme: dark)');
  const still = matchMedia('(prefers-reduced-motion: reduce)');
  const look = (): Surroundings => {
    const chosen = settings.read().theme;
    const theme = chosen === 'system' ? (dark.matches ? 'dark' : 'light') : chosen;
    return { theme, reducedMotion: still.matches };
  };
  const store = createStore(look());
  const renew = (): void => {
    const next = look();
    document.documentElement.dataset.theme = next.theme;
    store.write(next);
  };
  dark.addEventListener('change', renew);
  still.addEventListener('change', renew);
  settings.subscribe(renew);
  renew();
  return store;
}
