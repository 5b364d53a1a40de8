import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import type * as Engine from '../../engine/index.ts';
import type { RunSetup } from '../../engine/index.ts';
import { secondsToModulation } from './whole-start.ts';

const HOURS = [1, 2, 4, 8] as const;
const HOUR_S = 3600;
/** Enough to keep the burner modulating, hour after hour. */
const LOAD = 0.6;

export interface Growth {
  readonly rows: readonly {
    readonly hours: number;
    /** Wall time of a simulated hour so far, and memory held, over those of the first hour. */
    readonly timeRatio: number;
    readonly memoryRatio: number;
  }[];
  readonly firstHour: { readonly wallS: number; readonly memoryMB: number };
  /** What the burner does at the end. */
  readonly step: string;
}

/** One run of eight hours in modulation, recorder included, looked at on its way. */
export function measureGrowth(engine: typeof Engine, of: RunSetup): Growth {
  const collect = garbageCollector();
  const beforeBytes = held(collect);
  const run = engine.createRun({ ...of, initial: { ...of.initial, load: LOAD }, load: [] });
  const fromS = secondsToModulation(engine, of) + 60;
  run.advanceTo(fromS);
  let spentNs = 0;
  const looks = HOURS.map((hours) => {
    const start = process.hrtime.bigint();
    run.advanceTo(fromS + hours * HOUR_S);
    spentNs += Number(process.hrtime.bigint() - start);
    return { hours, perHourS: spentNs / 1e9 / hours, bytes: held(collect) - beforeBytes };
  });
  const first = looks[0] as (typeof looks)[number];
  const round = (x: number): number => Math.round(1000 * x) / 1000;
  return {
    rows: looks.map(({ hours, perHourS, bytes }) => ({
      hours,
      timeRatio: round(perHourS / first.perHourS),
      memoryRatio: round(bytes / first.bytes),
    })),
    firstHour: { wallS: round(first.perHourS), memoryMB: round(first.bytes / 1e6) },
    step: run.status().step,
  };
}

function held(collect: () => void): number {
  collect();
  const { heapUsed, arrayBuffers } = process.memoryUsage();
  return heapUsed + arrayBuffers;
}

function garbageCollector(): () => void {
  setFlagsFromString('--expose-gc');
  return runInNewContext('gc') as () => void;
}

export function growthInWords({ rows, firstHour, step }: Growth): string[] {
  return [
    `growth        ${firstHour.wallS} s and ${firstHour.memoryMB} MB for the first simulated hour (dairy, load ${LOAD}, at the end in ${step})`,
    ...rows.map(
      ({ hours, timeRatio, memoryRatio }) =>
        `  ${hours} h         ${timeRatio} times the time for each hour, ${memoryRatio} times the memory`,
    ),
  ];
}
