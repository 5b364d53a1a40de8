import { createStore } from '../session/store.ts';

/** `ready`: everything is kept on the device. `newer`: another version waits to be taken. */
export type OfflineState = 'none' | 'ready' | 'newer';

export const offline = createStore<{ readonly state: OfflineState }>({ state: 'none' });

let take: (() => void) | null = null;

/** Takes the version that waits, and loads the page again with it; work on the device stays. */
export function takeNewVersion(): void {
  take?.();
}

/** Until the reader asks for the newer version this one goes on, so no job is broken off. */
export async function keepForOffline(): Promise<void> {
  if (!('serviceWorker' in navigator) || import.meta.env.DEV) return;
  const { registerSW } = await import('virtual:pwa-register');
  const update = registerSW({
    onOfflineReady: () => offline.write({ state: 'ready' }),
    onNeedRefresh: () => offline.write({ state: 'newer' }),
    // An address that is not secure, or a browser that refuses: the page works while it is served.
    onRegisterError: () => offline.write({ state: 'none' }),
  });
  take = () => void update();
}
