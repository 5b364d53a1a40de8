/**
 * `npm run bench`: how fast the simulator is here and now, all figures of one run.
 * Ratios rather than seconds, because machines differ and this one may be busy.
 */
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'vite';
import type * as Engine from '../engine/index.ts';
import type { RunSetup } from '../engine/index.ts';
import { setupOf } from '../scenario/index.ts';
import { REPORTS, ROOT } from './house/paths.ts';
import { readLibrary } from './library.ts';

const WARM_UP_RUNS = 80;
const RUNS = 41;
const SHARE_RUNS = 6;
const GIVE_UP_S = 600;
const PARTS = ['field', 'plant', 'machine', 'recorder'] as const;
type Part = (typeof PARTS)[number];
/** Which part each phase of a step is booked on; phase 0 is what is due, done by the engine. */
const PART_OF_PHASE: readonly (Part | null)[] = [
  null,
  'field',
  'plant',
  'field',
  'machine',
  'recorder',
];

interface WholeStart {
  readonly simulatedS: number;
  readonly timesRealTime: number;
  readonly spread: { readonly min: number; readonly max: number };
  readonly share: Readonly<Record<Part, number>>;
}

const asJson = process.argv.includes('--json');
const skipPage = process.argv.includes('--no-page');

const library = readLibrary(ROOT);
if (!library.ok)
  throw new Error('the shipped scenarios do not load; run: npm run flamewright -- check');
const setup = setupOf(library.value, 'healthy-start');
if (setup === null) throw new Error('there is no scenario healthy-start');

const { createRun, STEP_S } = await bundledEngine();
const wholeStart = measureWholeStart(setup);
const page = skipPage ? null : await measurePageWhereThereIsABrowser();
const figures = { wholeStart, page };
console.log(asJson ? JSON.stringify(figures) : figuresInWords(figures));

/** The engine in one file, as the page's worker runs it. */
async function bundledEngine(): Promise<typeof Engine> {
  const outDir = join(REPORTS, 'bench');
  await build({
    configFile: false,
    root: ROOT,
    logLevel: 'error',
    ssr: { noExternal: true },
    build: {
      ssr: join(ROOT, 'src/engine/index.ts'),
      outDir,
      emptyOutDir: true,
      rollupOptions: { output: { entryFileNames: 'engine.cjs', format: 'cjs' } },
    },
  });
  return (await import(pathToFileURL(join(outDir, 'engine.cjs')).href)) as typeof Engine;
}

function measureWholeStart(of: RunSetup): WholeStart {
  const untilS = secondsToModulation(of);
  for (let i = 0; i < WARM_UP_RUNS; i++) createRun(of).advanceTo(untilS);
  const ratios: number[] = [];
  for (let i = 0; i < RUNS; i++) {
    const start = process.hrtime.bigint();
    createRun(of).advanceTo(untilS);
    ratios.push(untilS / (Number(process.hrtime.bigint() - start) / 1e9));
  }
  ratios.sort((a, b) => a - b);
  return {
    simulatedS: untilS,
    timesRealTime: Math.round(ratios[Math.floor(RUNS / 2)] as number),
    spread: {
      min: Math.round(ratios[0] as number),
      max: Math.round(ratios[RUNS - 1] as number),
    },
    share: measureShares(of, untilS),
  };
}

function secondsToModulation(of: RunSetup): number {
  const run = createRun(of);
  while (run.status().step !== 'modulation') {
    if (run.timeS() > GIVE_UP_S) throw new Error('healthy-start does not reach modulation');
    run.advanceTo(run.timeS() + STEP_S);
  }
  return run.timeS();
}

/** By a clock at every boundary of the step; the cost of reading the clock is taken off. */
function measureShares(of: RunSetup, untilS: number): Record<Part, number> {
  const spent: Record<Part, number> = { field: 0, plant: 0, machine: 0, recorder: 0 };
  const clockCost = costOfClock();
  let last = process.hrtime.bigint();
  const probe = (phase: number): void => {
    const now = process.hrtime.bigint();
    const part = PART_OF_PHASE[phase];
    if (part) spent[part] += Math.max(0, Number(now - last) - clockCost);
    last = process.hrtime.bigint();
  };
  for (let i = 0; i < SHARE_RUNS; i++) createRun(of, { probe }).advanceTo(untilS);
  const all = PARTS.reduce((sum, part) => sum + spent[part], 0);
  const share = (part: Part): number => Math.round((1000 * spent[part]) / all) / 1000;
  return {
    plant: share('plant'),
    field: share('field'),
    machine: share('machine'),
    recorder: share('recorder'),
  };
}

function costOfClock(): number {
  const costs: number[] = [];
  for (let i = 0; i < 20_000; i++) {
    const a = process.hrtime.bigint();
    costs.push(Number(process.hrtime.bigint() - a));
  }
  costs.sort((a, b) => a - b);
  return costs[Math.floor(costs.length / 2)] as number;
}

async function measurePageWhereThereIsABrowser() {
  const { measurePage } = await import('./house/page-figures.ts');
  try {
    return await measurePage();
  } catch (error) {
    return { notMeasured: error instanceof Error ? error.message : String(error) };
  }
}

function figuresInWords({ wholeStart: w, page: p }: typeof figures): string {
  const percent = (x: number): string => `${(100 * x).toFixed(0)} %`;
  const lines = [
    `whole start   ${w.timesRealTime} times real time (median of ${RUNS}; ${w.spread.min} to ${w.spread.max}), ${w.simulatedS} s simulated`,
    `  of that     ${PARTS.map((part) => `${part} ${percent(w.share[part])}`).join(', ')}`,
  ];
  if (p !== null && 'firstLoad' in p) {
    lines.push(
      `first load    ${(p.firstLoad.gzipBytes / 1024).toFixed(0)} kB of script, packed`,
      `interactive   ${p.timeToInteractive.ms.toFixed(0)} ms; ${p.timeToInteractive.slowedMs.toFixed(0)} ms with the processor slowed to a quarter`,
    );
    lines.push(
      `one picture   ${p.frame.medianMs} ms of scripting at the median, ${p.frame.p95Ms} ms at p95 (${p.frame.frames} pictures, 1366 x 768)`,
    );
  } else if (p !== null) {
    lines.push(`page          not measured: ${p.notMeasured}`);
  }
  return lines.join('\n');
}
