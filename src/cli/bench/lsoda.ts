/**
 * Drum, interspace and purge by the simulator's own components and by SciPy's LSODA, the same
 * equations from the same start, in the same minute on the same machine. Equal accuracy: LSODA gets
 * the loosest tolerance at which its error against a tight solution is no greater than ours.
 */
import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import type { RunSetup } from '../../engine/index.ts';
import { ROOT } from '../house/paths.ts';
import { findProgram } from '../house/programs.ts';
import { HELD, INTERSPACE, PURGE, prepareCase, TIMES_S } from './component-case.ts';
import type { Components } from './components.ts';

const WARM_UP_RUNS = 20;
const RUNS = 15;
const PYTHONS = ['python3', 'python'];
const LIMIT_MS = 240_000;

export interface Comparison {
  readonly simulatedS: number;
  /** Seconds of LSODA for one of ours. */
  readonly ratio: number;
  readonly ourMs: number;
  readonly lsodaMs: number;
  /** Greatest error of any quantity over its range. */
  readonly ourError: number;
  readonly lsodaError: number;
  readonly rtol: number;
}
export type ComparisonOrNot = Comparison | { readonly notMeasured: string };

interface Answer {
  readonly ourError: number;
  readonly error: number;
  readonly rtol: number;
  readonly seconds: number;
}

export function compareWithLsoda(components: Components, of: RunSetup): ComparisonOrNot {
  const python = findPythonWithScipy();
  if (python === undefined) {
    return { notMeasured: 'no python3 with SciPy here (Debian: apt-get install python3-scipy)' };
  }
  const prepared = prepareCase(components, of);
  if (prepared === null) return { notMeasured: 'the plant has no drum or no pair of valves' };
  for (let i = 0; i < WARM_UP_RUNS; i++) prepared.solve();
  const spent: number[] = [];
  let found: readonly (readonly number[])[] = [];
  for (let i = 0; i < RUNS; i++) {
    const system = prepared.create();
    const start = process.hrtime.bigint();
    found = prepared.run(system);
    spent.push(Number(process.hrtime.bigint() - start) / 1e6);
  }
  const ourMs = spent.sort((a, b) => a - b)[Math.floor(RUNS / 2)] as number;
  const { drum, start } = prepared;
  const input = { drum, held: HELD, interspace: INTERSPACE, purge: PURGE, start, timesS: TIMES_S };
  const outcome = spawnSync(python, [join(ROOT, 'tests/reference/lsoda_bench.py')], {
    input: JSON.stringify({ ...input, found }),
    encoding: 'utf8',
    timeout: LIMIT_MS,
    env: { ...process.env, PYTHONDONTWRITEBYTECODE: '1' },
  });
  if (outcome.status !== 0) return { notMeasured: `SciPy did not finish: ${outcome.stderr}` };
  const { ourError, error, rtol, seconds } = JSON.parse(outcome.stdout) as Answer;
  return {
    simulatedS: TIMES_S.at(-1) as number,
    ratio: Math.round((1000 * seconds) / ourMs),
    ourMs: Math.round(100 * ourMs) / 100,
    lsodaMs: Math.round(10_000 * seconds) / 10,
    ourError,
    lsodaError: error,
    rtol,
  };
}

function findPythonWithScipy(): string | undefined {
  const python = findProgram(PYTHONS);
  if (python === undefined) return undefined;
  return spawnSync(python, ['-c', 'import scipy'], { stdio: 'ignore' }).status === 0
    ? python
    : undefined;
}

export function comparisonInWords(c: ComparisonOrNot): string[] {
  if ('notMeasured' in c) return [`LSODA         not compared: ${c.notMeasured}`];
  const percent = (x: number): string => `${(100 * x).toPrecision(2)} %`;
  return [
    `LSODA         takes ${c.ratio} times as long for drum, interspace and purge, ${c.simulatedS} s (${c.lsodaMs} ms and ${c.ourMs} ms)`,
    `  both to     ${percent(c.ourError)} of the range (SciPy's LSODA, its equations in Python: ${percent(c.lsodaError)} at rtol ${c.rtol.toPrecision(2)})`,
  ];
}
