import { describe, expect, it } from 'vitest';
import { createContactBoard } from '../../src/field/contact.ts';
import {
  remoteContactParameters,
  type TimeClockParameters,
  timeClockParameters,
} from '../../src/field/index.ts';
import {
  createRemoteContact,
  createTimeClock,
  stepRemoteContact,
  stepTimeClock,
} from '../../src/field/time-clock.ts';
import { fillDefaults } from './fill-defaults.ts';

/** Hours of the day, from 0 to 23, at whose half the clock's contact is made. */
function madeHours(given: Partial<TimeClockParameters>): number[] {
  const clock = createTimeClock(
    fillDefaults(timeClockParameters, {
      id: 'clock',
      switches: 'call for heat',
      onHour: 6,
      offHour: 9,
      ...given,
    }),
    createContactBoard(),
  );
  return Array.from({ length: 24 }, (_, hour) => hour).filter((hour) => {
    stepTimeClock(clock, hour + 0.5);
    return clock.contact.made;
  });
}

describe('time clock', () => {
  it('is made between its hours', () => {
    expect(madeHours({})).toEqual([6, 7, 8]);
  });

  it('runs over midnight where it is made later than it breaks', () => {
    expect(madeHours({ onHour: 22, offHour: 2 })).toEqual([0, 1, 22, 23]);
  });

  it('set ahead does everything earlier, around the clock', () => {
    expect(madeHours({ aheadHours: 8 })).toEqual([0, 22, 23]);
    expect(madeHours({ aheadHours: -3 })).toEqual([9, 10, 11]);
  });

  it('with a bad contact does not follow its hours', () => {
    expect(madeHours({ contact: 'welded' })).toHaveLength(24);
    expect(madeHours({ contact: 'open' })).toEqual([]);
  });
});

describe('contact from outside', () => {
  const follows = (contact: 'sound' | 'welded' | 'open') => {
    const remote = createRemoteContact(
      fillDefaults(remoteContactParameters, { id: 'enable', switches: 'call for heat', contact }),
      createContactBoard(),
    );
    return [true, false].map((made) => {
      stepRemoteContact(remote, made);
      return remote.contact.made;
    });
  };

  it('follows what is outside, unless it is stuck', () => {
    expect(follows('sound')).toEqual([true, false]);
    expect(follows('welded')).toEqual([true, true]);
    expect(follows('open')).toEqual([false, false]);
  });
});
