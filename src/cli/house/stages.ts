import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { type Counts, countExit, countPlaywright, countVitest } from './counts.ts';
import { REPORTS } from './paths.ts';

export interface Stage {
  readonly name: string;
  readonly title: string;
  /** Arguments for Node. */
  readonly args: readonly string[];
  /** The runner's own report; without one the stage counts as a single test. */
  readonly report?: string;
  readonly needsBrowser?: boolean;
  /** Shells of other JavaScript engines, and servers; a missing one is for its tests to judge. */
  readonly usesPrograms?: boolean;
  readonly count: (exitedWell: boolean) => Counts;
}

const VITEST_REPORT = join(REPORTS, 'vitest.json');
export const PLAYWRIGHT_REPORT = join(REPORTS, 'playwright.json');

/** The checks of the project, in the order in which they tell most soonest. */
export const STAGES: readonly Stage[] = [
  {
    name: 'types',
    title: 'Types',
    args: ['node_modules/typescript/bin/tsc', '-p', 'tsconfig.json'],
    count: countExit,
  },
  {
    name: 'core-types',
    title: 'Types below the view, where there is no browser and no Node',
    args: ['node_modules/typescript/bin/tsc', '-p', 'tsconfig.core.json'],
    count: countExit,
  },
  {
    name: 'style',
    title: 'Format and lint',
    args: ['node_modules/@biomejs/biome/bin/biome', 'check', '--error-on-warnings', '.'],
    count: countExit,
  },
  {
    name: 'imports',
    title: 'Who imports whom',
    args: [
      'node_modules/dependency-cruiser/bin/dependency-cruise.mjs',
      '--config',
      '.dependency-cruiser.cjs',
      'src',
      'machines',
    ],
    count: countExit,
  },
  {
    name: 'unused',
    title: 'Unused files, exports and packages',
    args: ['node_modules/knip/bin/knip.js'],
    count: countExit,
  },
  {
    name: 'unit',
    title: 'Tests in Node',
    args: [
      'node_modules/vitest/vitest.mjs',
      'run',
      '--reporter=default',
      '--reporter=json',
      `--outputFile.json=${VITEST_REPORT}`,
    ],
    report: VITEST_REPORT,
    usesPrograms: true,
    count: (exitedWell) => countVitest(readReport(VITEST_REPORT), exitedWell),
  },
  {
    name: 'class-load',
    title: 'A small class under load, and a server lost',
    args: ['--import', 'tsx', 'src/cli/bench-class.ts', '--small'],
    usesPrograms: true,
    count: countExit,
  },
  {
    name: 'build',
    title: 'Build of the page',
    args: ['--import', 'tsx', 'src/cli/house/build.ts'],
    count: countExit,
  },
  {
    name: 'browser',
    title: 'Tests in a browser',
    args: ['node_modules/@playwright/test/cli.js', 'test'],
    report: PLAYWRIGHT_REPORT,
    needsBrowser: true,
    count: (exitedWell) => countPlaywright(readReport(PLAYWRIGHT_REPORT), exitedWell),
  },
];

function readReport<T>(path: string): T {
  return JSON.parse(readFileSync(path, 'utf8')) as T;
}
