/**
 * What a frame costs in scripting, for the bench and for nobody else: switched on by
 * `?measure` in the address, read from `flamewrightFrameCostsMs` on the window.
 */
declare global {
  interface Window {
    flamewrightFrameCostsMs?: number[];
  }
}

const MOST_KEPT = 20_000;

/** Runs one frame; its cost includes what React does about it in the same turn. */
export function measureFrame(frame: () => void): void {
  const costs = window.flamewrightFrameCostsMs;
  if (costs === undefined) {
    frame();
    return;
  }
  const startMs = performance.now();
  frame();
  queueMicrotask(() => {
    if (costs.length < MOST_KEPT) costs.push(performance.now() - startMs);
  });
}

export function startMeasuringIfAsked(): void {
  if (new URLSearchParams(location.search).has('measure')) window.flamewrightFrameCostsMs = [];
}
