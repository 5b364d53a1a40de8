import type { Browser } from '@playwright/test';
import { measureFirstLoad } from './first-load.ts';
import { DIST } from './paths.ts';
import { withPage } from './with-page.ts';

export interface PageFigures {
  readonly firstLoad: {
    /** Script that the first page fetches before anything is asked of it, packed. */
    readonly gzipBytes: number;
    readonly files: readonly string[];
  };
  /** From asking for the page until it is painted and the main thread is free to answer. */
  readonly timeToInteractive: {
    readonly ms: number;
    /** On a processor slowed to a quarter, as a stand-in for an old laptop. */
    readonly slowedMs: number;
    readonly loads: number;
  };
  /** Scripting of the main thread for one picture, everything moving, at 1366 × 768. */
  readonly frame: {
    readonly medianMs: number;
    readonly p95Ms: number;
    readonly frames: number;
  };
}

const LOADS = 5;
const SLOWED = 4;
/** A thread that has had no long task for this long is taken to be free. */
const QUIET_MS = 500;
const FRAME_WARM_UP_MS = 4000;
/** Long enough to go through valve proving into the drive to purge. */
const FRAME_SPAN_MS = 45_000;

interface FrameWindow {
  readonly flamewrightFrameCostsMs: number[];
}

export function measurePage(): Promise<PageFigures> {
  return withPage(async (browser, address) => {
    const ms = await medianTimeToInteractive(browser, address, 1);
    const slowedMs = await medianTimeToInteractive(browser, address, SLOWED);
    const { gzipBytes, scripts } = measureFirstLoad(DIST);
    return {
      firstLoad: { gzipBytes, files: scripts.map((script) => script.file) },
      timeToInteractive: { ms, slowedMs, loads: LOADS },
      frame: await frameCost(browser, address),
    };
  });
}

async function medianTimeToInteractive(
  browser: Browser,
  address: string,
  slowing: number,
): Promise<number> {
  const times: number[] = [];
  for (let load = 0; load < LOADS; load++) {
    times.push(await timeToInteractive(browser, address, slowing));
  }
  return times.sort((a, b) => a - b)[Math.floor(LOADS / 2)] as number;
}

/** A start watched from rest into the drive to purge; the first seconds are warming up. */
async function frameCost(browser: Browser, address: string): Promise<PageFigures['frame']> {
  const context = await browser.newContext({ viewport: { width: 1366, height: 768 } });
  try {
    const page = await context.newPage();
    await page.goto(`${address}?measure#/practise/watch/healthy-start`);
    await page.locator('canvas').first().waitFor();
    await page.waitForTimeout(FRAME_WARM_UP_MS);
    await page.evaluate(() => {
      (window as unknown as FrameWindow).flamewrightFrameCostsMs.length = 0;
    });
    await page.waitForTimeout(FRAME_SPAN_MS);
    const costs = await page.evaluate(() => [
      ...(window as unknown as FrameWindow).flamewrightFrameCostsMs,
    ]);
    costs.sort((a, b) => a - b);
    const at = (share: number): number =>
      Math.round(100 * (costs[Math.floor(share * (costs.length - 1))] ?? Number.NaN)) / 100;
    return { medianMs: at(0.5), p95Ms: at(0.95), frames: costs.length };
  } finally {
    await context.close();
  }
}

/** Each load has a context of its own, so nothing is in the cache. */
async function timeToInteractive(
  browser: Browser,
  address: string,
  slowing: number,
): Promise<number> {
  const context = await browser.newContext({ viewport: { width: 1366, height: 768 } });
  try {
    const page = await context.newPage();
    const session = await context.newCDPSession(page);
    await session.send('Emulation.setCPUThrottlingRate', { rate: slowing });
    await page.addInitScript(() => {
      const ends: number[] = [];
      Object.assign(window, { longTaskEnds: ends });
      new PerformanceObserver((list) => {
        for (const task of list.getEntries()) ends.push(task.startTime + task.duration);
      }).observe({ type: 'longtask', buffered: true });
    });
    await page.goto(address);
    await page.locator('h1').first().waitFor();
    await page.waitForLoadState('networkidle');
    await page.waitForTimeout(QUIET_MS);
    return await page.evaluate(() => {
      const painted = performance.getEntriesByName('first-contentful-paint')[0]?.startTime ?? 0;
      const ends = (window as unknown as { longTaskEnds: number[] }).longTaskEnds;
      return Math.round(Math.max(painted, ...ends));
    });
  } finally {
    await context.close();
  }
}
