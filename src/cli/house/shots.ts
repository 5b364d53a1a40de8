import { mkdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser } from '@playwright/test';
import { ROOT } from './paths.ts';
import { sayFailure } from './say-failure.ts';
import { SHOTS, type Shot } from './shot-list.ts';
import { withPage } from './with-page.ts';

const SIZES = [
  { width: 1366, height: 768 },
  { width: 1920, height: 1080 },
  { width: 820, height: 1180 },
] as const;
const THEMES = ['light', 'dark'] as const;
const FOLDER = join(ROOT, 'shots');
/** Long enough for a drawing to follow what was just shown. */
const SETTLE_MS = 800;

type Size = (typeof SIZES)[number];
type Theme = (typeof THEMES)[number];

function fileOf(shot: Shot, size: Size, theme: Theme): string {
  return `${shot.name}-${size.width}x${size.height}-${theme}.png`;
}

async function take(browser: Browser, address: string, shot: Shot, size: Size, theme: Theme) {
  const context = await browser.newContext({
    viewport: size,
    colorScheme: theme,
    locale: 'en-GB',
    timezoneId: 'UTC',
    hasTouch: size.width < 1000,
  });
  try {
    const page = await context.newPage();
    await page.goto(`${address}#${shot.route}`);
    await page.waitForLoadState('networkidle');
    await shot.prepare?.(page);
    await page.waitForTimeout(SETTLE_MS);
    await page.screenshot({ path: join(FOLDER, fileOf(shot, size, theme)) });
  } finally {
    await context.close();
  }
}

/** Pictures of every page and main state, for whoever reviews; a word chooses shots by name. */
async function takeShots(wanted: readonly string[]): Promise<void> {
  const shots = SHOTS.filter(
    (shot) => wanted.length === 0 || wanted.some((word) => shot.name.includes(word)),
  );
  if (wanted.length === 0) rmSync(FOLDER, { recursive: true, force: true });
  mkdirSync(FOLDER, { recursive: true });
  await withPage(async (browser, address) => {
    for (const shot of shots) {
      for (const size of SIZES) {
        for (const theme of THEMES) {
          const file = fileOf(shot, size, theme);
          try {
            await take(browser, address, shot, size, theme);
            process.stdout.write(`shots/${file}\n`);
          } catch (error) {
            const why = error instanceof Error ? error.message : String(error);
            process.stderr.write(`shots/${file}: not taken: ${why}\n`);
            process.exitCode = 1;
          }
        }
      }
    }
  });
}

await takeShots(process.argv.slice(2)).catch(sayFailure);
