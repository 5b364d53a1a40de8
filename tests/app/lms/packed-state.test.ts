import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type PackedState,
  packState,
  SCORM_ROOM,
  unpackState,
} from '../../../src/app/lms/packed-state.ts';
import { longInstants, shortInstants } from '../../../src/app/lms/short-instants.ts';
import { ROOT } from '../../../src/cli/house/paths.ts';

const STATE: PackedState = {
  v: 1,
  attempt: 'a-1',
  stamp: 's-1',
  best: 0.5,
  completed: true,
  passed: false,
  key: 'flamewright.quiz-open.20260504090000000',
  text: '{}',
};
const SEED = 20260504;

const BANK: readonly { readonly id: string; readonly kind: string }[] = JSON.parse(
  readFileSync(join(ROOT, 'assets', 'page', 'quiz', 'items.json'), 'utf8'),
).items;
const idsOf = (kind: string, count: number) =>
  BANK.filter((card) => card.kind === kind)
    .slice(0, count)
    .map(({ id }) => id);

/** An exam, each question answered and then, every third, answered once more. */
function examText(count: number): string {
  const items = [...idsOf('cause', 20), ...idsOf('calculation', 30)].slice(0, count);
  const at = (n: number) =>
    new Date(Date.UTC(2026, 4, 4, 9) + n * 37_123 + (n % 7) * 911).toISOString();
  const entries: object[] = [{ type: 'begin', atISO: at(0), mode: 'exam', seed: 417, items }];
  for (const place of items.keys()) {
    const times = place % 3 === 0 ? 2 : 1;
    for (let turn = 0; turn < times; turn += 1) {
      const n = entries.length;
      entries.push({ type: 'go to', atISO: at(n), place });
      const response =
        place < 20
          ? { is: 'choice', option: (place * 7) % 4 }
          : { is: 'number', value: 3.7 * place };
      entries.push({ type: 'answer', atISO: at(n), place, response, confidence: 75 });
    }
  }
  return JSON.stringify({ v: 1, skill: null, drafts: [], entries });
}

describe('what a learning system keeps of an attempt', () => {
  it('comes back as it was, from any text of work, in bounded length or without the work', () => {
    fc.assert(
      fc.property(
        fc.string({ unit: 'binary', maxLength: 6000 }),
        fc.option(fc.double({ min: 0, max: 1, noNaN: true })),
        (text, best) => {
          const state = { ...STATE, best, text };
          const { packed, whole } = packState(state, SCORM_ROOM);
          expect(packed.length).toBeLessThanOrEqual(SCORM_ROOM);
          expect(packed).toMatch(/^[ -~]*$/);
          // Halves of pairs are no text that a device keeps.
          if (!text.isWellFormed()) return;
          const back = { ok: true, state: whole ? state : { ...state, text: null } };
          expect(unpackState(packed)).toEqual(back);
          expect(unpackState(packState(state, null).packed)).toEqual({ ok: true, state });
        },
      ),
      { seed: SEED, numRuns: 20 },
    );
  });

  it('has room by SCORM 1.2 for an exam of fifty questions', () => {
    const { whole } = packState({ ...STATE, text: examText(50) }, SCORM_ROOM);
    expect(whole).toBe(true);
  });

  it('is known to be damaged, with the attempt where that can still be read', () => {
    const { packed } = packState({ ...STATE, text: examText(20) }, SCORM_ROOM);
    expect(unpackState(packed.slice(0, -40))).toEqual({ ok: false, attempt: 'a-1' });
    expect(unpackState(packed.toLowerCase())).toEqual({ ok: false, attempt: 'a-1' });
    expect(unpackState('<p>error</p>')).toEqual({ ok: false, attempt: null });
    expect(unpackState('{"v":2}')).toEqual({ ok: false, attempt: null });
  });

  it('shortens instants so that every text comes back, also one that looks shortened', () => {
    const some = fc.oneof(
      fc
        .date({ noInvalidDate: true, min: new Date(0), max: new Date(4e12) })
        .map((d) => d.toISOString()),
      fc.constantFrom('~1a', '~', '~-5', '2026-02-30T00:00:00.000Z', '2026-05-04'),
      fc.string({ maxLength: 8 }),
    );
    fc.assert(
      fc.property(fc.array(some, { maxLength: 12 }), (all) => {
        const text = JSON.stringify(all);
        const short = shortInstants(text);
        // What looks shortened but is not would be taken for it: then nothing is shortened.
        if (short === null) return;
        expect(longInstants(short)).toBe(text);
        expect(short.length).toBeLessThanOrEqual(text.length);
      }),
      { seed: SEED, numRuns: 500 },
    );
  });
});
