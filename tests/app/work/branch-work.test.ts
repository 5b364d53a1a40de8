/** Branches of work: what they take over, where they are kept, and that the work itself is left alone. */
import { beforeEach, describe, expect, it } from 'vitest';
import { branchesOf, type Fork, makeBranch, sourceOf } from '../../../src/app/work/branch-work.ts';
import {
  eraseKept,
  exportKept,
  importKept,
  keyOfWork,
  listKept,
  readKept,
  writeKept,
} from '../../../src/app/work/keep-work.ts';
import { openWork } from '../../../src/app/work/open-work.ts';
import { MOST_BRANCHES, type WorkRecord } from '../../../src/app/work/work-record.ts';
import { createToyShelf, type ToyShelf } from './toy-shelf.ts';

const NOW = '2026-11-28T23:00:00.000Z';
const NAME = { kind: 'job', id: 'cold-classrooms' } as const;
const FORK: Fork = { t: 210, entries: 2 };
const WORK: WorkRecord = {
  v: 1,
  ...NAME,
  seed: 3,
  startedISO: '2026-11-28T22:00:00.000Z',
  savedISO: '2026-11-28T22:30:00.000Z',
  log: [
    { t: 5, type: 'call-for-heat', on: true },
    { t: 190, type: 'check', what: 'multimeter: volts', place: 'L1', other: 'N' },
    { t: 195, type: 'check', what: 'multimeter: volts', place: '12', other: 'N' },
    { t: 200, type: 'check', what: 'manometer: mid', place: 'inlet', other: '' },
    { t: 210, type: 'repair', part: 'damper', way: 'replace' },
    { t: 220, type: 'check', what: 'strobe: high', place: 'fan-shaft', other: '' },
  ],
  pending: [],
  desk: [
    { t: 180, type: 'arrive', tools: ['manometer'], guidance: 'guided' },
    { t: 182, type: 'begin' },
    { t: 230, type: 'claim', part: 'damper', why: [], mechanism: '' },
    { t: 240, type: 'close' },
  ],
  headS: 240,
  hash: 'whole',
  setupHash: 'abc',
  uses: [{ tool: 'manometer', place: 'inlet', range: 'mid' }],
};

let shelf: ToyShelf;
beforeEach(() => {
  shelf = createToyShelf();
  writeKept(shelf, WORK);
});

const branched = (branch = 1): WorkRecord =>
  readKept(shelf, { ...NAME, branch }, NOW).record as WorkRecord;

describe('a branch', () => {
  it('has what was done and written before it, and nothing of what came after', () => {
    expect(makeBranch(shelf, WORK, FORK, NOW)).toEqual({
      name: { ...NAME, branch: 1 },
      issue: null,
    });
    expect(branched()).toMatchObject({
      ...NAME,
      log: WORK.log.slice(0, 4),
      desk: WORK.desk.slice(0, 2),
      headS: 210,
      pending: [],
      setupHash: 'abc',
      branchOf: { n: 1, startedISO: WORK.startedISO, t: 210 },
    });
  });

  it('is not held to the hash of a run that went on otherwise', () => {
    makeBranch(shelf, WORK, FORK, NOW);
    const opening = openWork(shelf, () => NOW, { ...NAME, branch: 1 }).opening();
    expect(opening).toEqual({
      ...NAME,
      log: WORK.log.slice(0, 4),
      pending: [],
      untilS: 210,
      setupHash: 'abc',
    });
  });

  it('has the tools on that stayed, and of each other kind the one put on last', () => {
    makeBranch(shelf, WORK, FORK, NOW);
    expect(branched().uses).toEqual([
      { tool: 'manometer', place: 'inlet', range: 'mid' },
      { tool: 'multimeter', place: '12', other: 'N', range: 'volts' },
    ]);
  });

  it('is worked on without a change to the work it comes from', () => {
    const before = shelf.get(keyOfWork(NAME));
    makeBranch(shelf, WORK, FORK, NOW);
    const work = openWork(shelf, () => NOW, { ...NAME, branch: 1 });
    work.putDesk([...branched().desk, { t: 211, type: 'note', text: 'otherwise' }]);
    expect(branched().desk).toHaveLength(3);
    expect(branched().branchOf).toEqual({ n: 1, startedISO: WORK.startedISO, t: 210 });
    expect(shelf.get(keyOfWork(NAME))).toBe(before);
  });

  it('that is erased while it is open stays erased', () => {
    makeBranch(shelf, WORK, FORK, NOW);
    const work = openWork(shelf, () => NOW, { ...NAME, branch: 1 });
    work.erase();
    work.putDesk([]);
    expect(shelf.keys()).toEqual([keyOfWork(NAME)]);
  });

  it('is not begun from nothing, whatever is written', () => {
    const work = openWork(shelf, () => NOW, { ...NAME, branch: 2 });
    work.putDesk([{ t: 0, type: 'arrive', tools: [] }]);
    expect(shelf.keys()).toEqual([keyOfWork(NAME)]);
  });
});

describe('branches of a job', () => {
  const makeAll = (): void => {
    for (let n = 0; n < MOST_BRANCHES; n += 1) makeBranch(shelf, WORK, FORK, NOW);
  };

  it('are listed beside the work, which stays the only one of its name', () => {
    makeAll();
    const { entries } = listKept(shelf, NOW);
    expect(entries.filter(({ branchOf }) => branchOf === null)).toHaveLength(1);
    expect(branchesOf(shelf, WORK, NOW).map(({ branch }) => branch)).toEqual([1, 2, 3]);
  });

  it('are a few: one more is refused until one is erased', () => {
    makeAll();
    expect(makeBranch(shelf, WORK, FORK, NOW)).toEqual({ name: null, issue: 'full' });
    eraseKept(shelf, { ...NAME, branch: 2 });
    expect(makeBranch(shelf, WORK, FORK, NOW).name?.branch).toBe(2);
  });

  it('of work that was begun anew make room, and stand aside', () => {
    makeAll();
    const anew = { ...WORK, startedISO: '2026-11-28T23:30:00.000Z' };
    expect(branchesOf(shelf, anew, NOW)).toEqual([]);
    expect(makeBranch(shelf, anew, FORK, NOW).issue).toBeNull();
    expect(listKept(shelf, NOW).aside).toHaveLength(1);
    expect(branchesOf(shelf, anew, NOW)).toHaveLength(1);
  });

  it('know the work they come from, until it is gone or another one', () => {
    makeBranch(shelf, WORK, FORK, NOW);
    expect(sourceOf(shelf, branched(), NOW)).toEqual(WORK);
    writeKept(shelf, { ...WORK, startedISO: NOW });
    expect(sourceOf(shelf, branched(), NOW)).toBeNull();
  });

  it('say when the device has no room for another', () => {
    shelf.room = JSON.stringify(WORK).length + 200;
    expect(makeBranch(shelf, WORK, FORK, NOW).issue).toMatchObject({ trouble: 'no room' });
  });

  it('go by a file to another device with the work', () => {
    makeAll();
    const other = createToyShelf();
    const { taken, issues } = importKept(other, exportKept(shelf, NOW), NOW);
    expect(issues).toEqual([]);
    expect(taken).toHaveLength(1 + MOST_BRANCHES);
    expect(branchesOf(other, WORK, NOW)).toHaveLength(MOST_BRANCHES);
  });

  it('are erased with their work, and with everything', () => {
    makeAll();
    writeKept(shelf, { ...WORK, id: 'other' });
    eraseKept(shelf, NAME);
    expect(shelf.keys()).toEqual([keyOfWork({ kind: 'job', id: 'other' })]);
    makeBranch(shelf, { ...WORK, id: 'other' }, FORK, NOW);
    eraseKept(shelf, 'all');
    expect(shelf.keys()).toEqual([]);
  });

  it('that cannot be read are put aside and named as what they are', () => {
    makeAll();
    shelf.set(keyOfWork({ ...NAME, branch: 1 }), '{"v":1');
    const list = listKept(shelf, NOW);
    expect(list.issues).toMatchObject([{ trouble: 'broken', name: { ...NAME, branch: 1 } }]);
    expect(branchesOf(shelf, WORK, NOW)).toHaveLength(MOST_BRANCHES - 1);
  });
});
