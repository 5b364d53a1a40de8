/** A run small enough to see through: one channel counts the time reset was in, the hash is the whole story. */

import type { BenchPort, WorkDone } from '../../../src/app/session/bench-port.ts';
import type { HostPorts } from '../../../src/app/session/host-ports.ts';
import type { Facts, ToPage } from '../../../src/app/session/protocol.ts';
import type { RunKind } from '../../../src/app/session/work-protocol.ts';
import type { Message } from '../../../src/bench/index.ts';
import type { Action, Run, RunEvent, RunSetup, TimedAction } from '../../../src/engine/index.ts';

export const TOY_STEPS = ['standby', 'purge', 'modulation'] as const;

export function createToyRun(setup: RunSetup): Run {
  const log: TimedAction[] = [...setup.actions];
  const frames: Float64Array[] = [Float64Array.of(0, 0)];
  const events: RunEvent[] = [];
  let step = 0;
  let steps = 0;
  let held = 0;
  let taken = 0;
  let pressed = 0;
  let story = 1;
  let supplyOn = true;
  const locks = new Set<string>();
  function take(): void {
    for (; taken < log.length && (log[taken]?.t ?? 0) <= step / 100 + 1e-9; taken += 1) {
      const action = log[taken];
      if (action === undefined) return;
      events.push({ t: step / 100, type: 'action', action });
      if (action.type === 'reset') pressed = action.pressed ? 1 : 0;
      if (action.type === 'supply') supplyOn = action.on;
      if (action.type === 'lock' && action.on) locks.add(action.point);
    }
  }
  return {
    setup,
    channels: [
      { id: 'held', unit: 's', kind: 'time', part: 'visible' },
      { id: 'logic.step', unit: '1', kind: 'word', part: 'visible' },
    ],
    frameS: 0.1,
    timeS: () => step / 100,
    advanceTo(tS) {
      for (const last = Math.round(tS * 100); step < last; ) {
        take();
        held += pressed;
        step += 1;
        if (step === 1000 || step === 5000) {
          steps += 1;
          events.push({ t: step / 100, type: 'step', step: TOY_STEPS[steps] ?? 'modulation' });
        }
        if (step % 10 === 0) {
          frames.push(Float64Array.of(held, steps));
          story = (Math.imul(story, 31) + held) | 0;
        }
      }
    },
    act(action: Action) {
      const timed = { t: step / 100, ...action } as TimedAction;
      const later = log.findIndex(({ t }, i) => i >= taken && t > timed.t);
      log.splice(later < 0 ? log.length : later, 0, timed);
      return timed;
    },
    put(action: TimedAction) {
      if (Math.round(action.t * 100) < step) return false;
      const later = log.findIndex(({ t }, i) => i >= taken && t > action.t);
      log.splice(later < 0 ? log.length : later, 0, action);
      return true;
    },
    log: () => [...log],
    events: () => events,
    frameCount: () => frames.length,
    firstFrame: () => 0,
    standingFaults: () => [],
    meter: () => {
      throw new Error('the toy has no wires');
    },
    parts: () => [],
    settings: () => [],
    bench: () => ({
      locks: [...locks],
      jumpers: [],
      strokes: [],
      opened: [],
      supplyOn,
      cocks: [],
    }),
    lookPlaces: () => ['fuses'],
    look: (what) =>
      what === 'fuses' ? { what, values: {}, words: [], needsOpening: false } : null,
    listen: () => [{ what: 'fan', loudness: 0.5 }],
    smell: () => 0.25,
    frame: (k) => frames[k] as Float64Array,
    hash: () => `${step}:${story}`,
    status: () => ({
      step: TOY_STEPS[steps] ?? 'modulation',
      sinceS: 0,
      lockout: null,
      lockoutStep: null,
      resets: 0,
    }),
  };
}

export function toyFacts(run: Run, kind: RunKind = 'watch', arriveS = 0): Facts {
  return {
    scenario: { id: 'toy', title: 'Toy', summary: '', caution: null, plant: 'toy' },
    plantTitle: 'Toy',
    channels: run.channels.map((channel) => ({ ...channel })),
    frameS: 0.1,
    readings: {},
    steps: [],
    stepNames: [...TOY_STEPS],
    inputs: [],
    plantInputs: [],
    hasLimitReset: true,
    wiring: { sources: [], wires: [], elements: [], rungs: [] },
    commands: [],
    targets: [],
    faults: [],
    cocks: [],
    allow: null,
    work: {
      kind,
      rewinds: kind === 'watch' || kind === 'lesson',
      allow: null,
      seed: 1,
      setupHash: 'toy',
    },
    arriveS,
    parts: [],
    settings: [],
    sheet: [],
    lookPlaces: ['fuses'],
    tools: [],
    testPoints: [],
    panel: [],
    topics: [],
  };
}

const said = (code: string): Message => ({ code });

/** A bench small enough to see through: a meter counts how often it was read, minutes are acts and notes. */
export const TOY_BENCH: BenchPort = {
  tools: [],
  panelChannels: [],
  testPoints: () => [],
  checkUse: (_plant, { place }) =>
    place === 'nowhere' ? { found: said('found'), mend: said('mend') } : null,
  checkOf: ({ tool, place, other = '' }) => ({ type: 'check', what: tool, place, other }),
  connectTool: (_use, tS) => {
    let reads = 0;
    return (run) => {
      reads += 1;
      return {
        value: run.timeS() - tS,
        kind: null,
        unit: 's',
        shown: String(reads),
        flags: [],
        steady: true,
      };
    };
  },
  minutes: ({ log, desk }: WorkDone) => ({ total: log.length + desk.length, lines: [] }),
  proof: ({ untilS }: WorkDone) => ({ items: [], proved: untilS > 20 }),
  judge: ({ untilS }: WorkDone) => ({
    conduct: [],
    proof: { items: [], proved: untilS > 20 },
  }),
  sheet: () => [],
};

export interface Bench {
  readonly ports: HostPorts;
  readonly posted: ToPage[];
  clockMs: number;
}

/** @param arriveS when the learner comes, where it is no watch */
export function createBench(actions: readonly TimedAction[] = [], arriveS = 0): Bench {
  const setup = { actions, faults: [], load: [], seed: 1 } as unknown as RunSetup;
  const bench: Bench = {
    posted: [],
    clockMs: 0,
    ports: {
      nowMs: () => bench.clockMs,
      post: (message) => bench.posted.push(message),
      openStage: (_id, kind) => ({
        setup,
        healthySetup: setup,
        healthyUntilS: 5,
        answer: null,
        endS: 3600,
        facts: (run) => toyFacts(run, kind, arriveS),
      }),
      createRun: createToyRun,
      bench: { ...TOY_BENCH },
    },
  };
  return bench;
}
