/** What is kept of work on a device: it comes back as it was, and nothing is lost that cannot. */
import { beforeEach, describe, expect, it } from 'vitest';
import {
  eraseKept,
  exportKept,
  importKept,
  keyOfWork,
  listKept,
  readKept,
  writeKept,
} from '../../../src/app/work/keep-work.ts';
import type { WorkRecord } from '../../../src/app/work/work-record.ts';
import { createToyShelf, type ToyShelf } from './toy-shelf.ts';

const NOW = '2026-11-28T23:00:00.000Z';
const NAME = { kind: 'job', id: 'cold-classrooms' } as const;
const RECORD: WorkRecord = {
  v: 1,
  ...NAME,
  seed: 3,
  startedISO: '2026-11-28T22:00:00.000Z',
  savedISO: '2026-11-28T22:30:00.000Z',
  log: [
    { t: 5, type: 'call-for-heat', on: true },
    { t: 90.25, type: 'check', what: 'manometer: low', place: 'inlet', other: '' },
  ],
  pending: [{ type: 'supply', on: false }],
  desk: [
    { t: 180, type: 'arrive', tools: ['manometer'] },
    { t: 190, type: 'pin', what: 'manometer', place: 'a', other: '', reading: '12 mbar', step: '' },
    { t: 200, type: 'claim', part: 'damper', why: [0], mechanism: 'jammed' },
  ],
  headS: 200.1,
  hash: null,
  setupHash: 'abc',
  uses: [{ tool: 'manometer', place: 'inlet', range: 'low' }],
};

let shelf: ToyShelf;
beforeEach(() => {
  shelf = createToyShelf();
});

describe('kept work', () => {
  it('comes back as it was', () => {
    expect(writeKept(shelf, RECORD)).toBeNull();
    expect(readKept(shelf, NAME, NOW)).toEqual({ record: RECORD, issue: null });
    expect(listKept(shelf, NOW).entries).toMatchObject([{ ...NAME, headS: 200.1, closed: false }]);
  });

  it('of two exercises is kept apart, the newest first', () => {
    writeKept(shelf, RECORD);
    writeKept(shelf, { ...RECORD, kind: 'drill' });
    writeKept(shelf, {
      ...RECORD,
      id: 'other',
      savedISO: NOW,
      desk: [{ t: 300, type: 'close' }],
    });
    expect(listKept(shelf, NOW).entries.map(({ kind, id }) => `${kind} ${id}`)).toEqual([
      'job other',
      'job cold-classrooms',
      'drill cold-classrooms',
    ]);
    expect(listKept(shelf, NOW).entries[0]?.closed).toBe(true);
  });

  it.each([
    ['no JSON', '{"v":1,'],
    ['nothing', 'null'],
    ['another thing', '{"v":1,"kind":"job"}'],
    ['work of another exercise', JSON.stringify({ ...RECORD, id: 'other' })],
    ['a desk entry of no kind', JSON.stringify({ ...RECORD, desk: [{ t: 1, type: 'fly' }] })],
    ['an act without a time', JSON.stringify({ ...RECORD, log: [{ type: 'supply', on: true }] })],
    ['a time that is none', JSON.stringify({ ...RECORD, headS: null })],
    ['an older version', JSON.stringify({ ...RECORD, v: 0 })],
  ])('that is %s is put aside whole, and named', (_what, text) => {
    shelf.set(keyOfWork(NAME), text);
    const { record, issue } = readKept(shelf, NAME, NOW);
    expect(record).toBeNull();
    expect(issue).toMatchObject({ trouble: 'broken', name: NAME });
    const [aside, ...more] = listKept(shelf, NOW).aside;
    expect(more).toEqual([]);
    expect(aside).toMatchObject({ name: NAME, why: 'broken', atISO: NOW });
    expect(JSON.parse(shelf.get(aside?.key ?? '') ?? '')).toMatchObject({ text });
    expect(readKept(shelf, NAME, NOW)).toEqual({ record: null, issue: null });
  });

  it('of a newer version stays where the newer version looks for it, and is named', () => {
    const text = JSON.stringify({ ...RECORD, v: 2, more: true });
    shelf.set(keyOfWork(NAME), text);
    const list = listKept(shelf, NOW);
    expect(list.issues).toMatchObject([{ trouble: 'newer version', name: NAME }]);
    expect(shelf.get(keyOfWork(NAME))).toBe(text);
  });

  it('stays where it is when a full device has no room to put it aside', () => {
    shelf.set(keyOfWork(NAME), 'broken');
    shelf.room = 60;
    expect(readKept(shelf, NAME, NOW).issue?.trouble).toBe('broken');
    expect(shelf.get(keyOfWork(NAME))).toBe('broken');
  });

  it('that does not fit any more is reported, and what fitted before is left', () => {
    writeKept(shelf, RECORD);
    shelf.room = 1200;
    const longer = { ...RECORD, desk: [{ t: 1, type: 'note' as const, text: 'x'.repeat(1000) }] };
    expect(writeKept(shelf, longer)).toMatchObject({ trouble: 'no room', name: NAME });
    expect(readKept(shelf, NAME, NOW).record).toEqual(RECORD);
  });

  it('that the browser will not keep is reported too', () => {
    shelf.set = () => {
      throw new DOMException('not here', 'SecurityError');
    };
    expect(writeKept(shelf, RECORD)).toMatchObject({ trouble: 'storage refused' });
  });

  it('goes by a file to another device', () => {
    writeKept(shelf, RECORD);
    writeKept(shelf, { ...RECORD, kind: 'lesson', id: 'first-start' });
    const other = createToyShelf();
    const { taken, issues } = importKept(other, exportKept(shelf, NOW), NOW);
    expect(issues).toEqual([]);
    expect(taken).toHaveLength(2);
    expect(readKept(other, NAME, NOW).record).toEqual(RECORD);
  });

  it('that a file brings does not write over what is here: that goes aside', () => {
    writeKept(shelf, RECORD);
    const file = exportKept(shelf, NOW);
    const here = { ...RECORD, headS: 999 };
    writeKept(shelf, here);
    importKept(shelf, file, NOW);
    expect(readKept(shelf, NAME, NOW).record).toEqual(RECORD);
    const [aside] = listKept(shelf, NOW).aside;
    expect(aside?.why).toBe('replaced by import');
    expect(JSON.parse(JSON.parse(shelf.get(aside?.key ?? '') ?? '').text)).toEqual(here);
    importKept(shelf, file, NOW);
    expect(listKept(shelf, NOW).aside).toHaveLength(1);
  });

  it.each(['', 'null', '7', '[]', '{"works":[]}', 'a letter'])(
    'is not taken from a file that is none (%j)',
    (text) => {
      expect(importKept(shelf, text, NOW).issues).toMatchObject([{ trouble: 'not saved work' }]);
      expect(shelf.keys()).toEqual([]);
    },
  );

  it('is taken from a file record by record: a broken one is named, the others come in', () => {
    const works = [{ ...RECORD, id: 'bad', log: 7 }, RECORD, null];
    const file = JSON.stringify({ file: 'flamewright work', works });
    const { taken, issues } = importKept(shelf, file, NOW);
    expect(taken).toEqual([NAME]);
    expect(issues).toMatchObject([
      { trouble: 'broken', name: { kind: 'job', id: 'bad' } },
      { trouble: 'broken', name: null },
    ]);
  });

  it('is erased one by one or all at once, and nothing else of the page with it', () => {
    shelf.set('flamewright.settings', '{}');
    writeKept(shelf, RECORD);
    writeKept(shelf, { ...RECORD, id: 'other' });
    shelf.set(keyOfWork({ kind: 'job', id: 'third' }), 'broken');
    const [aside] = listKept(shelf, NOW).aside;
    eraseKept(shelf, NAME);
    expect(listKept(shelf, NOW).entries.map(({ id }) => id)).toEqual(['other']);
    eraseKept(shelf, { key: aside?.key ?? '' });
    expect(listKept(shelf, NOW).aside).toEqual([]);
    eraseKept(shelf, 'all');
    expect(shelf.keys()).toEqual(['flamewright.settings']);
  });
});
