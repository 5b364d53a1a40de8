import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createContactBoard } from '../../src/field/contact.ts';
import {
  type ContactCondition,
  createSnapSwitch,
  prepareSnapSwitch,
  stepSnapSwitch,
} from '../../src/field/snap-switch.ts';

const STEP_S = 0.01;

function snap(
  makesOnRise: boolean,
  makeAt: number,
  breakAt: number,
  dwellS = 0,
  latches = false,
  condition: ContactCondition = 'sound',
) {
  const s = createSnapSwitch(createContactBoard());
  prepareSnapSwitch(s, makesOnRise, makeAt, breakAt, dwellS, latches, condition);
  return s;
}

const values = fc.array(fc.double({ min: -50, max: 150, noNaN: true }), {
  minLength: 1,
  maxLength: 200,
});

describe('two-point switch', () => {
  it('never moves while the value stays inside its band, whichever way it makes', () => {
    fc.assert(
      fc.property(fc.boolean(), fc.boolean(), values, (rises, startMade, walk) => {
        const s = rises ? snap(true, 100, 50) : snap(false, 50, 100);
        stepSnapSwitch(s, startMade === rises ? 120 : 30, false, STEP_S);
        const before = s.contact.made;
        expect(before).toBe(startMade);
        for (const value of walk) {
          stepSnapSwitch(s, 50.001 + ((value + 50) / 200) * 49.998, false, STEP_S);
          expect(s.contact.made).toBe(before);
        }
      }),
      { seed: 11 },
    );
  });

  it('does what a switch without any shortcut would do, for every walk of the value', () => {
    fc.assert(
      fc.property(
        fc.boolean(),
        fc.constantFrom(0, 0.03, 0.1),
        fc.boolean(),
        fc.array(
          fc.record({
            value: fc.integer({ min: 0, max: 150 }),
            reset: fc.boolean(),
            preparedAnew: fc.boolean(),
            repeats: fc.integer({ min: 0, max: 12 }),
          }),
          { maxLength: 80 },
        ),
        (rises, dwellS, latches, walk) => {
          const [makeAt, breakAt] = rises ? [100, 50] : [50, 100];
          const s = snap(rises, makeAt, breakAt, dwellS, latches);
          let made = false;
          let pending = 0;
          let tripped = false;
          for (const { value, reset, preparedAnew, repeats } of walk) {
            if (preparedAnew) {
              prepareSnapSwitch(s, rises, makeAt, breakAt, dwellS, latches, 'sound');
            }
            for (let i = 0; i <= repeats; i++) {
              stepSnapSwitch(s, value, reset, STEP_S);
              const high = rises ? value > breakAt : value < breakAt;
              const past = rises ? value >= makeAt : value <= makeAt;
              pending = (made ? !high : past) ? pending + 1 : 0;
              if (pending > 0 && pending * STEP_S >= dwellS - 1e-6) {
                if (made) tripped = latches;
                made = !made;
                pending = 0;
              }
              if (made && reset) tripped = false;
              expect(s.contact.made).toBe(made && !tripped);
            }
          }
        },
      ),
      { seed: 12 },
    );
  });

  it.each([
    [
      'moves in the step that completes its dwell, and back as late',
      0.03,
      '#####.....',
      '__#####___',
    ],
    ['forgets a wish that was withdrawn before its dwell', 0.03, '##.##.###', '________#'],
    ['follows in the same step without a dwell', 0, '#.##.', '#_##_'],
  ])('%s', (_title, dwellS, pattern, expected) => {
    const s = snap(true, 100, 50, dwellS);
    const seen = [...pattern].map((mark) => {
      stepSnapSwitch(s, mark === '#' ? 120 : 0, false, STEP_S);
      return s.contact.made ? '#' : '_';
    });
    expect(seen.join('')).toBe(expected);
  });

  it('stays made for ever once welded, and open for ever once the contact is open', () => {
    fc.assert(
      fc.property(
        values,
        fc.constantFrom<ContactCondition>('welded', 'open'),
        (walk, condition) => {
          const s = snap(true, 100, 50, 0, false, condition);
          for (const value of walk) {
            stepSnapSwitch(s, value, false, STEP_S);
            expect(s.contact.made).toBe(condition === 'welded');
          }
        },
      ),
      { seed: 13 },
    );
  });

  it('latches open when it breaks, and a reset helps only after the value is back', () => {
    const s = snap(false, 90, 100, 0, true);
    const step = (value: number, reset: boolean) => {
      stepSnapSwitch(s, value, reset, STEP_S);
      return s.contact.made;
    };
    expect(step(80, false)).toBe(true);
    expect(step(101, false)).toBe(false);
    expect(step(101, true)).toBe(false);
    expect(step(95, true)).toBe(false);
    expect(step(80, false)).toBe(false);
    expect(step(80, true)).toBe(true);
    expect(step(80, false)).toBe(true);
  });

  it('tells its board of a move, and of nothing else', () => {
    const board = createContactBoard();
    const s = createSnapSwitch(board);
    prepareSnapSwitch(s, true, 100, 50, 0, false, 'sound');
    board.changed = false;
    stepSnapSwitch(s, 99, false, STEP_S);
    expect(board.changed).toBe(false);
    stepSnapSwitch(s, 101, false, STEP_S);
    expect(board.changed).toBe(true);
  });
});
