import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  addResult,
  eraseResults,
  exportResults,
  importResults,
  keptResults,
  RESULTS_KEY,
} from '../../../src/app/learner/keep-results.ts';
import {
  type KeptResult,
  mergeResults,
  readResults,
  writeResults,
} from '../../../src/app/learner/result-record.ts';
import { createToyShelf } from '../work/toy-shelf.ts';
import { anyKept, JOB_RESULT } from './any-results.ts';

const SEED = 20261129;

const another: KeptResult = { ...JOB_RESULT, id: 'school-first-frost' };

describe('results on a device', () => {
  it('come back as they were taken in, each attempt once', () => {
    const shelf = createToyShelf();
    expect(addResult(shelf, JOB_RESULT)).toBe('counted');
    expect(addResult(shelf, another)).toBe('counted');
    expect(addResult(shelf, { ...JOB_RESULT, atISO: '2026-05-06T10:00:00.000Z' })).toBe('counted');
    expect(keptResults(shelf)).toEqual({
      results: [JOB_RESULT, another],
      trouble: null,
      aside: false,
    });
  });

  it('of two pages that are open at once are all kept', () => {
    const shelf = createToyShelf();
    keptResults(shelf);
    addResult(shelf, JOB_RESULT);
    // The other page had looked before, and writes now.
    addResult(shelf, another);
    expect(keptResults(shelf).results).toHaveLength(2);
  });

  it('learn how the cause was found when that is known at last, and never forget it', () => {
    const shelf = createToyShelf();
    const unknown = { ...JOB_RESULT, outcome: 0.7, parts: { found: null, pathScore: null } };
    addResult(shelf, unknown);
    addResult(shelf, { ...JOB_RESULT, atISO: '2026-05-06T10:00:00.000Z' });
    expect(keptResults(shelf).results[0]?.parts.found).toBe('by readings');
    addResult(shelf, unknown);
    expect(keptResults(shelf).results[0]?.parts.found).toBe('by readings');
  });

  it('that were erased do not come back when their debrief is read again; later ones count', () => {
    const shelf = createToyShelf();
    addResult(shelf, JOB_RESULT);
    const file = exportResults(shelf);
    eraseResults(shelf, '2026-05-05T00:00:00.000Z');
    expect(keptResults(shelf).results).toEqual([]);
    expect(addResult(shelf, JOB_RESULT)).toBe('erased');
    expect(addResult(shelf, { ...another, startedISO: '2026-05-05T00:00:00.001Z' })).toBe(
      'counted',
    );
    // By hand they may come back.
    expect(importResults(shelf, file)).toMatchObject({ taken: 1, trouble: null });
    expect(keptResults(shelf).results).toHaveLength(2);
  });

  it('that cannot be read stand aside once something is written, and go only by being erased', () => {
    const shelf = createToyShelf();
    const broken = writeResults([JOB_RESULT], null).replace('"outcome":0.9', '"outcome":9');
    shelf.set(RESULTS_KEY, broken);
    expect(keptResults(shelf)).toMatchObject({ results: [], trouble: 'broken', aside: false });
    addResult(shelf, another);
    expect(keptResults(shelf)).toEqual({ results: [another], trouble: null, aside: true });
    expect(shelf.keys().map((key) => shelf.get(key))).toContain(broken);
    eraseResults(shelf, '2026-05-05T00:00:00.000Z');
    expect(keptResults(shelf).aside).toBe(false);
    expect(shelf.keys()).toEqual([RESULTS_KEY]);
  });

  it('keep what can be read of a list with one that cannot', () => {
    const shelf = createToyShelf();
    shelf.set(RESULTS_KEY, writeResults([JOB_RESULT, { ...another, hints: -1 }], null));
    expect(keptResults(shelf)).toMatchObject({ results: [JOB_RESULT], trouble: 'broken' });
  });

  it('of a newer version are left as they are', () => {
    const shelf = createToyShelf();
    const newer = JSON.stringify({ file: 'flamewright results', v: 2, whatever: true });
    shelf.set(RESULTS_KEY, newer);
    expect(addResult(shelf, JOB_RESULT)).toBe('newer version');
    const file = writeResults([JOB_RESULT], null);
    expect(importResults(shelf, file)).toEqual({ taken: 0, issues: [], trouble: 'newer version' });
    expect(shelf.get(RESULTS_KEY)).toBe(newer);
  });

  it('say so where the device has no room, and lose nothing', () => {
    const shelf = createToyShelf();
    addResult(shelf, JOB_RESULT);
    shelf.room = 500;
    expect(addResult(shelf, another)).toBe('no room');
    expect(keptResults(shelf).results).toEqual([JOB_RESULT]);
  });
});

describe('a file of results', () => {
  it('brings everything to another device, and nothing twice', () => {
    fc.assert(
      fc.property(fc.array(anyKept, { maxLength: 12 }), fc.array(anyKept), (here, there) => {
        const [one, two] = [createToyShelf(), createToyShelf()];
        for (const result of here) addResult(one, result);
        for (const result of there) addResult(two, result);
        importResults(two, exportResults(one));
        expect(keptResults(two).results).toEqual(mergeResults([...here, ...there]));
        expect(importResults(two, exportResults(one)).taken).toBe(0);
      }),
      { seed: SEED, numRuns: 50 },
    );
  });

  it('is merged the same whichever comes first', () => {
    fc.assert(
      fc.property(fc.array(anyKept), fc.array(anyKept), (one, two) => {
        expect(mergeResults([...one, ...two])).toEqual(mergeResults([...two, ...one]));
      }),
      { seed: SEED },
    );
  });

  it.each([
    ['no file of ours', '{"file":"flamewright work"}', 'not results', ''],
    ['no JSON', 'results', 'not results', ''],
    ['nothing', 'null', 'not results', ''],
    ['newer', '{"file":"flamewright results","v":9}', 'newer version', 'v'],
    [
      'without a list',
      '{"file":"flamewright results","v":1,"erasedISO":null}',
      'broken',
      'results',
    ],
    ['outcome', changed({ outcome: 1.2 }), 'broken', 'results.1.outcome'],
    ['skill', changed({ skills: ['fuel', 'cooking'] }), 'broken', 'results.1.skills.1'],
    ['skill twice', changed({ skills: ['fuel', 'fuel'] }), 'broken', 'results.1.skills'],
    ['time', changed({ atISO: 'yesterday' }), 'broken', 'results.1.atISO'],
    [
      'way',
      changed({ parts: { found: 'by luck', pathScore: 0 } }),
      'broken',
      'results.1.parts.found',
    ],
    ['too much', changed({ name: 'Ada' }), 'broken', 'results.1.name'],
  ])('that is wrong (%s) is refused as a whole, with the place', (_, text, trouble, where) => {
    const shelf = createToyShelf();
    addResult(shelf, another);
    const imported = importResults(shelf, text);
    expect(imported).toMatchObject({ taken: 0, issues: [{ trouble, where }] });
    expect(keptResults(shelf).results).toEqual([another]);
  });

  it('may be any text without breaking the page', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.json()), (text) => {
        expect(readResults(text).results).toEqual([]);
      }),
      { seed: SEED },
    );
  });
});

function changed(change: object): string {
  return JSON.stringify({
    file: 'flamewright results',
    v: 1,
    erasedISO: null,
    results: [JOB_RESULT, { ...JOB_RESULT, ...change }],
  });
}
