/**
 * `npm run bench`: how fast the simulator is here and now, all figures of one run.
 * Ratios rather than seconds, because machines differ and this one may be busy.
 */
import type * as Diagnosis from '../diagnosis/index.ts';
import type * as Engine from '../engine/index.ts';
import { setupOf } from '../scenario/index.ts';
import { atlasFile, atlasFolder, readAtlas } from './atlas/files.ts';
import { bundled } from './bench/bundle.ts';
import type * as Components from './bench/components.ts';
import { growthInWords, measureGrowth } from './bench/growth.ts';
import { compareWithLsoda, comparisonInWords } from './bench/lsoda.ts';
import { measureRanking, rankingInWords } from './bench/ranking.ts';
import { measureWholeStart, wholeStartInWords } from './bench/whole-start.ts';
import { ROOT } from './house/paths.ts';
import { readLibrary } from './library.ts';

const asJson = process.argv.includes('--json');
const skipPage = process.argv.includes('--no-page');

const library = readLibrary(ROOT);
if (!library.ok)
  throw new Error('the shipped scenarios do not load; run: npm run flamewright -- check');
const setup = setupOf(library.value, 'healthy-start');
if (setup === null) throw new Error('there is no scenario healthy-start');

const engine = await bundled<typeof Engine>('src/engine/index.ts', 'engine');
const { components } = await bundled<typeof Components>(
  'src/cli/bench/components.ts',
  'components',
);
const diagnosis = await bundled<typeof Diagnosis>('src/diagnosis/index.ts', 'diagnosis');
const atlas = readAtlas(atlasFile(atlasFolder(ROOT), 'dairy'));
const figures = {
  wholeStart: measureWholeStart(engine, setup),
  growth: measureGrowth(engine, setup),
  lsoda: compareWithLsoda(components, setup),
  ranking: atlas === null ? null : measureRanking(diagnosis, atlas),
  page: skipPage ? null : await measurePageWhereThereIsABrowser(),
};
console.log(asJson ? JSON.stringify(figures) : figuresInWords(figures));

async function measurePageWhereThereIsABrowser() {
  const { measurePage } = await import('./house/page-figures.ts');
  try {
    return await measurePage();
  } catch (error) {
    return { notMeasured: error instanceof Error ? error.message : String(error) };
  }
}

function figuresInWords({ wholeStart, growth, lsoda, ranking, page: p }: typeof figures): string {
  const lines = [
    ...wholeStartInWords(wholeStart),
    ...growthInWords(growth),
    ...comparisonInWords(lsoda),
    ...rankingInWords(ranking),
  ];
  if (p !== null && 'firstLoad' in p) {
    lines.push(
      `first load    ${(p.firstLoad.gzipBytes / 1024).toFixed(0)} kB of script, packed`,
      `interactive   ${p.timeToInteractive.ms.toFixed(0)} ms; ${p.timeToInteractive.slowedMs.toFixed(0)} ms with the processor slowed to a quarter`,
      `one picture   ${p.frame.medianMs} ms of scripting at the median, ${p.frame.p95Ms} ms at p95 (${p.frame.frames} pictures, 1366 x 768)`,
    );
  } else if (p !== null) {
    lines.push(`page          not measured: ${p.notMeasured}`);
  }
  return lines.join('\n');
}
