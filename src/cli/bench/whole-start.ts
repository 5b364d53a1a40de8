import type * as Engine from '../../engine/index.ts';
import type { RunSetup } from '../../engine/index.ts';

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

export interface WholeStart {
  readonly simulatedS: number;
  /** The first run of the process made ready: tables of its gas and of steam, code not yet warm. */
  readonly firstReadyMs: number;
  readonly timesRealTime: number;
  readonly spread: { readonly min: number; readonly max: number };
  readonly share: Readonly<Record<Part, number>>;
}

/** How fast a start goes from rest to modulation, everything on. */
export function measureWholeStart(engine: typeof Engine, of: RunSetup): WholeStart {
  const { createRun } = engine;
  const before = process.hrtime.bigint();
  createRun(of);
  const firstReadyMs = Math.round(Number(process.hrtime.bigint() - before) / 1e6);
  const untilS = secondsToModulation(engine, of);
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
    firstReadyMs,
    timesRealTime: Math.round(ratios[Math.floor(RUNS / 2)] as number),
    spread: {
      min: Math.round(ratios[0] as number),
      max: Math.round(ratios[RUNS - 1] as number),
    },
    share: measureShares(engine, of, untilS),
  };
}

export function secondsToModulation({ createRun, STEP_S }: typeof Engine, of: RunSetup): number {
  const run = createRun(of);
  while (run.status().step !== 'modulation') {
    if (run.timeS() > GIVE_UP_S) throw new Error('healthy-start does not reach modulation');
    run.advanceTo(run.timeS() + STEP_S);
  }
  return run.timeS();
}

/** By a clock at every boundary of the step; the cost of reading the clock is taken off. */
function measureShares(
  { createRun }: typeof Engine,
  of: RunSetup,
  untilS: number,
): Record<Part, number> {
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

export function wholeStartInWords(w: WholeStart): string[] {
  const { timesRealTime, spread, simulatedS, share, firstReadyMs } = w;
  const parts = PARTS.map((part) => `${part} ${(100 * share[part]).toFixed(0)} %`).join(', ');
  return [
    `whole start   ${timesRealTime} times real time (median of ${RUNS}; ${spread.min} to ${spread.max}), ${simulatedS} s simulated`,
    `  of that     ${parts}`,
    `  ready       ${firstReadyMs} ms for the first run of a process, its tables of gas and steam included`,
  ];
}
