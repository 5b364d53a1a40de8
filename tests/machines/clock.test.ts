import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createSimulatedClock } from '../../machines/index.ts';

const SEED = 20;

describe('the simulated clock', () => {
  it('fires every timer at its own time, in order of due time and then of setting', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 50 }), { maxLength: 30 }), (delays) => {
        const clock = createSimulatedClock();
        const fired: { readonly place: number; readonly atMs: number }[] = [];
        delays.forEach((delay, place) => {
          clock.setTimeout(() => fired.push({ place, atMs: clock.nowMs }), delay);
        });
        clock.advanceTo(50);
        const due = delays.map((delay, place) => ({ place, atMs: delay }));
        expect(fired).toEqual(due.sort((a, b) => a.atMs - b.atMs || a.place - b.place));
        expect(clock.nowMs).toBe(50);
      }),
      { seed: SEED },
    );
  });

  it('loses no time over a chain of delays, however it is advanced', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 0, max: 40 }), { minLength: 1, maxLength: 12 }),
        fc.array(fc.integer({ min: 1, max: 100 }), { maxLength: 12 }),
        (delays, jumps) => {
          const clock = createSimulatedClock(1000);
          const fired: number[] = [];
          const chain = (place: number): void => {
            const delay = delays[place];
            if (delay === undefined) return;
            clock.setTimeout(() => {
              fired.push(clock.nowMs);
              chain(place + 1);
            }, delay);
          };
          chain(0);
          for (const jump of jumps) clock.advanceTo(clock.nowMs + jump);
          clock.advanceTo(clock.nowMs + 1000);
          const due = delays.map((_, place) =>
            delays.slice(0, place + 1).reduce((sum, delay) => sum + delay, 1000),
          );
          expect(fired).toEqual(due);
        },
      ),
      { seed: SEED },
    );
  });

  it('never fires a cleared timer, nor one not yet due', () => {
    fc.assert(
      fc.property(
        fc.array(fc.record({ delay: fc.integer({ min: 0, max: 50 }), keep: fc.boolean() })),
        fc.integer({ min: 0, max: 50 }),
        (timers, untilMs) => {
          const clock = createSimulatedClock();
          const fired = new Set<number>();
          timers.forEach(({ delay, keep }, place) => {
            const id = clock.setTimeout(() => fired.add(place), delay);
            if (!keep) clock.clearTimeout(id);
          });
          clock.advanceTo(untilMs);
          timers.forEach(({ delay, keep }, place) => {
            expect(fired.has(place)).toBe(keep && delay <= untilMs);
          });
        },
      ),
      { seed: SEED },
    );
  });

  it('always tells when the next timer is due', () => {
    fc.assert(
      fc.property(
        fc.array(
          fc.oneof(
            fc.record({ set: fc.integer({ min: 0, max: 50 }) }),
            fc.record({ clear: fc.nat(20) }),
            fc.record({ advance: fc.integer({ min: 0, max: 30 }) }),
          ),
        ),
        (acts) => {
          const clock = createSimulatedClock();
          const running = new Map<number, number>();
          for (const act of acts) {
            if ('set' in act) {
              const id = clock.setTimeout(() => running.delete(id), act.set);
              running.set(id, clock.nowMs + act.set);
            } else if ('clear' in act) {
              clock.clearTimeout(act.clear);
              running.delete(act.clear);
            } else {
              clock.advanceTo(clock.nowMs + act.advance);
            }
            expect(clock.nextDueMs).toBe(Math.min(Number.POSITIVE_INFINITY, ...running.values()));
          }
        },
      ),
      { seed: SEED },
    );
  });

  it('lets a callback clear a timer that is due at the same instant', () => {
    const clock = createSimulatedClock();
    const fired: string[] = [];
    clock.setTimeout(() => {
      fired.push('first');
      clock.clearTimeout(second);
    }, 10);
    const second = clock.setTimeout(() => fired.push('second'), 10);
    clock.advanceTo(10);
    expect(fired).toEqual(['first']);
  });

  it('refuses to go back, to be advanced from a callback, and an endless chain at one instant', () => {
    const clock = createSimulatedClock(100);
    expect(() => clock.advanceTo(99)).toThrow('cannot go back');
    let refused: unknown;
    clock.setTimeout(() => {
      try {
        clock.advanceTo(200);
      } catch (error) {
        refused = error;
      }
    }, 1);
    clock.advanceTo(150);
    expect(String(refused)).toContain('already advancing');
    const again = (): void => {
      clock.setTimeout(again, 0);
    };
    again();
    expect(() => clock.advanceTo(151)).toThrow('without end');
  });
});
