import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { keyOnBoard } from '../../../src/app/teach-class/board-keys.ts';
import { NOBODY, pickAll, pickSeat } from '../../../src/app/teach-class/selection.ts';

const SHOWN = [7, 3, 9, 1, 4];

describe('choosing seats', () => {
  it('one more is added, and the same again is taken out', () => {
    const one = pickSeat(NOBODY, 9, 'toggle', SHOWN);
    const two = pickSeat(one, 3, 'toggle', SHOWN);
    expect(two.seats).toEqual([3, 9]);
    expect(pickSeat(two, 9, 'toggle', SHOWN).seats).toEqual([3]);
  });

  it('a range goes along the board as it is shown, either way, and keeps what was chosen', () => {
    const from = pickSeat(NOBODY, 3, 'toggle', SHOWN);
    expect(pickSeat(from, 1, 'range', SHOWN).seats).toEqual([1, 3, 9]);
    expect(pickSeat(from, 7, 'range', SHOWN).seats).toEqual([3, 7]);
    const last = pickSeat(pickSeat(from, 1, 'range', SHOWN), 4, 'toggle', SHOWN);
    expect(last.seats).toEqual([1, 3, 4, 9]);
  });

  it('a range from a seat that is not shown any more chooses the one alone', () => {
    const from = pickSeat(NOBODY, 3, 'toggle', SHOWN);
    expect(pickSeat(from, 4, 'range', [9, 4]).seats).toEqual([3, 4]);
  });

  it('all are those that are shown', () => {
    expect(pickAll(SHOWN).seats).toEqual([1, 3, 4, 7, 9]);
    expect(pickAll([]).seats).toEqual([]);
  });
});

describe('keys on the board', () => {
  const key = (name: string, more = {}) => ({
    key: name,
    shiftKey: false,
    ctrlKey: false,
    metaKey: false,
    ...more,
  });

  it('go to the neighbours, and down to the last where the last row is not full', () => {
    expect(keyOnBoard(key('ArrowRight'), 1, 8, 3)).toEqual({ does: 'move', to: 2 });
    expect(keyOnBoard(key('ArrowUp'), 1, 8, 3)).toEqual({ does: 'move', to: 1 });
    expect(keyOnBoard(key('ArrowDown'), 5, 8, 3)).toEqual({ does: 'move', to: 7 });
    expect(keyOnBoard(key('ArrowDown', { shiftKey: true }), 1, 8, 3)).toEqual({
      does: 'range',
      to: 4,
    });
    expect(keyOnBoard(key('a', { ctrlKey: true }), 1, 8, 3)?.does).toBe('all');
  });

  it('leave what is none of theirs to the browser', () => {
    for (const name of ['Tab', 'a', 'F5']) expect(keyOnBoard(key(name), 0, 8, 3)).toBeNull();
    expect(keyOnBoard(key('r', { ctrlKey: true }), 0, 8, 3)).toBeNull();
    expect(keyOnBoard(key('ArrowDown'), -1, 0, 3)).toBeNull();
  });

  it('never leave the board', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 50 }),
        fc.integer({ min: 1, max: 8 }),
        fc.nat(),
        fc.constantFrom('ArrowLeft', 'ArrowRight', 'ArrowUp', 'ArrowDown', 'Home', 'End'),
        (count, columns, at, name) => {
          const to = keyOnBoard(key(name), at % count, count, columns)?.to ?? -1;
          expect(to).toBeGreaterThanOrEqual(0);
          expect(to).toBeLessThan(count);
        },
      ),
      { seed: 13 },
    );
  });
});
