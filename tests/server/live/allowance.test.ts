import { describe, expect, it } from 'vitest';
import { createAllowances } from '../../../src/server/live/allowance.ts';
import { placeOf } from '../../../src/server/live/limits.ts';

describe('an allowance', () => {
  it('gives its burst at once, then so many a second, and never saves up more than the burst', () => {
    let nowMs = 0;
    const allowances = createAllowances(() => nowMs);
    const allowance = { burst: 3, perS: 2 };
    const takeAll = () => {
      let taken = 0;
      while (allowances.take('one', allowance)) taken += 1;
      return taken;
    };
    expect(takeAll()).toBe(3);
    nowMs = 499;
    expect(takeAll()).toBe(0);
    nowMs = 1000;
    expect(takeAll()).toBe(2);
    nowMs = 100_000;
    expect(takeAll()).toBe(3);
  });

  it('of one name is not that of another', () => {
    const allowances = createAllowances(() => 0);
    const once = { burst: 1, perS: 0 };
    expect(allowances.take('one', once)).toBe(true);
    expect(allowances.take('other', once)).toBe(true);
    expect(allowances.take('one', once)).toBe(false);
  });

  it('is not given anew by a clock that is put back', () => {
    let nowMs = 10_000;
    const allowances = createAllowances(() => nowMs);
    const once = { burst: 1, perS: 1 };
    expect(allowances.take('one', once)).toBe(true);
    nowMs = 0;
    expect(allowances.take('one', once)).toBe(false);
  });
});

describe('the place that someone comes from', () => {
  it.each([
    ['192.0.2.7', '192.0.2.7'],
    ['::ffff:192.0.2.7', '192.0.2.7'],
    ['2001:db8:1:2:3:4:5:6', '2001:db8:1:2'],
    ['2001:db8:1:2:ffff::1', '2001:db8:1:2'],
  ])('%s is %s', (address, place) => expect(placeOf(address)).toBe(place));
});
