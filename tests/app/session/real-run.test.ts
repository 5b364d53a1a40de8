/** The host over the real engine and the shipped scenarios: what a learner does is a run that replays. */
import library from 'virtual:library';
import { describe, expect, it } from 'vitest';
import { factsSchema } from '../../../src/app/session/protocol.ts';
import type { Action } from '../../../src/engine/index.ts';
import { openHost } from './real-host.ts';

const open = (id: string) => openHost({ kind: 'watch', id });

/** Rewinds to the start and comes back: the host itself compares the hashes. */
function expectSameAgain(run: ReturnType<typeof open>): void {
  run.tell({ type: 'pause' });
  const { timeS, hash } = run.status();
  run.tell({ type: 'seek', tS: 0 }, { type: 'live' });
  expect(run.status()).toMatchObject({ timeS, hash });
  expect(run.of('failed')).toEqual([]);
}

describe('a run as a learner makes it', () => {
  it('opens with facts that the page accepts, for every shipped scenario', () => {
    for (const { id } of library.scenarios) {
      const [opened] = open(id).of('opened');
      expect(factsSchema.safeParse(opened?.facts).error).toBeUndefined();
    }
  });

  it('names every permissive it shows and every device behind it', () => {
    const [opened] = open('healthy-start').of('opened');
    const ids = opened?.facts.channels.map(({ id }) => id) ?? [];
    const waits = opened?.facts.steps.flatMap((step) => step.waits) ?? [];
    expect(waits.length).toBeGreaterThan(20);
    for (const { input } of waits) {
      const reading = opened?.facts.readings[input];
      expect(reading, input).toBeDefined();
      if (reading?.channel) expect(ids).toContain(reading.channel);
    }
  });

  it('replays to the same hash after switches, cocks, load, faults and a reset', () => {
    const run = open('healthy-start');
    const acts: Action[] = [
      { type: 'set-load', load: 0.6 },
      { type: 'turn-cock', cock: 'cock', opening: 0.5 },
      { type: 'insert-fault', fault: 'damper jammed short of purge', severity: 25 },
      { type: 'firing', mode: 'hand', rate: 0.4 },
      { type: 'emergency-stop', pressed: true },
      { type: 'emergency-stop', pressed: false },
      { type: 'clear-fault', fault: 'damper jammed short of purge' },
      { type: 'reset', pressed: true },
      { type: 'reset', pressed: false },
      { type: 'call-for-heat', on: false },
    ];
    run.tell({ type: 'play', speed: 20 });
    for (const action of acts) {
      run.live(0.45);
      run.tell({ type: 'act', action });
    }
    run.live(2);
    expect(run.events().filter(({ type }) => type === 'action').length).toBeGreaterThan(10);
    expectSameAgain(run);
  });

  it('replays to the same hash when something is done at the very start and at each change of step', () => {
    const run = open('jammed-damper');
    run.tell({ type: 'act', action: { type: 'set-load', load: 0.5 } });
    for (let step = 0; step < 6; step += 1) {
      run.tell({ type: 'next step' });
      run.live(5);
      run.tell({ type: 'act', action: { type: 'set-load', load: 0.3 + step / 20 } });
    }
    run.tell({ type: 'play', speed: 20 });
    run.live(1);
    expectSameAgain(run);
  });

  it('shows the expected run of a healthy plant, whatever is wrong with this one', () => {
    const run = open('jammed-damper');
    run.live(1);
    const [opened] = run.of('opened');
    const [expected] = run.of('expected');
    const width = opened?.facts.channels.length ?? 1;
    const step = opened?.facts.channels.findIndex(({ id }) => id === 'logic.step') ?? 0;
    const last = (expected?.frames.length ?? 0) - width + step;
    expect(opened?.facts.stepNames[expected?.frames[last] ?? 0]).toBe('modulation');
  });
});
