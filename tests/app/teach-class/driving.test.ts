import { describe, expect, it } from 'vitest';
import { driveApart } from '../../../src/app/teach-class/drive.ts';
import { faultAct, searchFaults, standingByActs } from '../../../src/app/teach-class/fault-acts.ts';
import { leadClass, WORK_EVERY_MS } from '../../../src/app/teach-class/lead-class.ts';
import { momentOf } from '../../../src/app/teach-class/moment-text.ts';
import { newSteps } from '../../../src/app/teach-class/use-triggers.ts';
import type { Spoken } from '../../../src/classroom/index.ts';
import type { Action } from '../../../src/engine/index.ts';

describe('driving own copies', () => {
  const RESET: Action = { type: 'reset', pressed: true };

  it('says everything once to all, or to each seat that is chosen at that moment', () => {
    const said: Spoken[] = [];
    let chosen: readonly number[] = [];
    const drive = driveApart(
      async (...entries) => {
        said.push(...entries);
        return true;
      },
      () => (chosen.length === 0 ? ['all'] : chosen.map((seat) => ({ seat }))),
    );
    drive.freeze();
    chosen = [2, 5];
    drive.backBy(10);
    drive.act([RESET], null);
    expect(said).toEqual([
      { type: 'freeze', to: 'all' },
      { type: 'rewind by', to: { seat: 2 }, byS: 10 },
      { type: 'rewind by', to: { seat: 5 }, byS: 10 },
      { type: 'do', to: { seat: 2 }, acts: [RESET] },
      { type: 'do', to: { seat: 5 }, acts: [RESET] },
    ]);
  });

  it('lays an act ready for a step under a name of its own for each seat', () => {
    const said: Spoken[] = [];
    const drive = driveApart(
      async (...entries) => {
        said.push(...entries);
        return true;
      },
      () => [{ seat: 1 }, { seat: 2 }],
    );
    drive.act([RESET], 'purge');
    const ids = said.map((entry) => (entry.type === 'when' ? entry.id : ''));
    expect(new Set(ids).size).toBe(2);
    expect(said.every((entry) => entry.type === 'when' && entry.step === 'purge')).toBe(true);
  });
});

describe('a fault that is put in', () => {
  const wish = { fault: 'x', severity: 3, overS: 120, periodS: 30, duty: 0.3 };

  it('is the act of the engine that its manner asks for', () => {
    expect(faultAct({ ...wish, manner: 'at once' })).toEqual({
      type: 'insert-fault',
      fault: 'x',
      severity: 3,
    });
    expect(faultAct({ ...wish, manner: 'growing' })).toEqual({
      type: 'ramp-fault',
      fault: 'x',
      severity: 3,
      overS: 120,
    });
    expect(faultAct({ ...wish, manner: 'coming and going' })).toEqual({
      type: 'intermittent-fault',
      fault: 'x',
      severity: 3,
      periodS: 30,
      duty: 0.3,
    });
  });

  it('is known to stand until it is cleared or has shrunk to nothing', () => {
    const acts: Action[] = [
      { type: 'insert-fault', fault: 'a', severity: 1 },
      { type: 'ramp-fault', fault: 'b', severity: 1, overS: 5 },
      { type: 'intermittent-fault', fault: 'c', severity: 1, periodS: 5, duty: 0.5 },
      { type: 'clear-fault', fault: 'a' },
      { type: 'ramp-fault', fault: 'b', severity: 0, overS: 5 },
    ];
    expect(standingByActs(acts)).toEqual(['c']);
  });

  it('is found by any words of what it is, in any order, and within a family', () => {
    const faults = [
      { id: 'fan belt slips', family: 'air', component: 'fan', mechanism: 'worn belt' },
      { id: 'spark gap wide', family: 'ignition', component: 'spark', mechanism: 'burnt tip' },
    ];
    expect(searchFaults(faults, 'WORN fan', '').map(({ id }) => id)).toEqual(['fan belt slips']);
    expect(searchFaults(faults, '', 'ignition').map(({ id }) => id)).toEqual(['spark gap wide']);
    expect(searchFaults(faults, 'fan', 'ignition')).toEqual([]);
    expect(searchFaults(faults, ' ', '')).toHaveLength(2);
  });
});

describe('leading the one plant', () => {
  it('tells the work with everything done and now and then else, and the head each time', () => {
    const works: number[] = [];
    const heads: number[] = [];
    let nowMs = 0;
    const tell = leadClass(
      {
        tellWork: ({ headS }) => works.push(headS),
        tellHead: ({ headS }) => heads.push(headS),
      },
      { attempt: 1, startedMs: 0, setupHash: 'h' },
      () => nowMs,
    );
    const log: [] = [];
    const told = { log, hash: null, mode: 'playing' as const, speed: 1 };
    for (const headS of [0, 0.5, 1, 1.5]) {
      tell({ ...told, headS });
      nowMs += 500;
    }
    expect(works).toEqual([0]);
    tell({ ...told, headS: 2, mode: 'paused' });
    nowMs += WORK_EVERY_MS;
    tell({ ...told, headS: 2, mode: 'paused' });
    // Back: what is kept must not stand ahead of the plant.
    tell({ ...told, headS: 1, mode: 'paused' });
    expect(works).toEqual([0, 2, 2, 1]);
    expect(heads).toEqual([0, 0.5, 1, 1.5, 2, 2, 1]);
  });

  it('sees a step that is entered anew after a cut, and none twice', () => {
    const standby = { t: 0, type: 'step', step: 'standby' } as const;
    const purge = { t: 5, type: 'step', step: 'purge' } as const;
    const again = { t: 6, type: 'step', step: 'purge' } as const;
    expect(newSteps([standby], [standby, purge])).toEqual(['purge']);
    expect(newSteps([standby, purge], [standby])).toEqual([]);
    expect(newSteps([standby, purge], [standby, again])).toEqual(['purge']);
  });
});

describe('a moment that is written', () => {
  it.each([
    ['83', 83],
    ['1:23', 83],
    [' 0:07.5 ', 7.5],
    ['', null],
    ['1:2:3', null],
    ['soon', null],
    ['99999999', null],
  ])('%j is %j', (text, atS) => {
    expect(momentOf(text)).toBe(atS);
  });
});
