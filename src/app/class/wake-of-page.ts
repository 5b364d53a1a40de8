const TICK_MS = 2000;
/** A clock that stood so long stood because the device slept. */
const SLEPT_MS = 7000;

/** Calls back when the page is looked at again, when there is a network again, and after a sleep of the device. */
export function wakeOfPage(again: () => void): () => void {
  let lastMs = Date.now();
  const onVisible = (): void => {
    if (document.visibilityState === 'visible') again();
  };
  const onShow = (event: PageTransitionEvent): void => {
    if (event.persisted) again();
  };
  const timer = setInterval(() => {
    const nowMs = Date.now();
    if (nowMs - lastMs > SLEPT_MS) again();
    lastMs = nowMs;
  }, TICK_MS);
  addEventListener('online', again);
  addEventListener('pageshow', onShow);
  document.addEventListener('visibilitychange', onVisible);
  return () => {
    clearInterval(timer);
    removeEventListener('online', again);
    removeEventListener('pageshow', onShow);
    document.removeEventListener('visibilitychange', onVisible);
  };
}
