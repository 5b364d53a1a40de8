import { describe, expect, it } from 'vitest';
import { clearShelf, shelfOfSeat } from '../../../src/app/class/class-shelf.ts';
import { bookOfTry, keepBook, NEW_BOOK, readBook } from '../../../src/app/class/seat-book.ts';
import {
  forgetPlace,
  keepPlace,
  listPlaces,
  readPlace,
} from '../../../src/app/class/seat-place.ts';
import { createToyShelf } from '../work/toy-shelf.ts';
import { PLACE } from './toy-seat.ts';

describe('the seats of a device', () => {
  it('are there again after a reload, the latest first, until they are forgotten', () => {
    const shelf = createToyShelf();
    const other = { ...PLACE, code: 'KMNPRT', joinedISO: '2026-11-29T10:00:00.000Z' };
    expect(keepPlace(shelf, PLACE)).toBe(true);
    keepPlace(shelf, other);
    expect(readPlace(shelf, PLACE.code)).toEqual(PLACE);
    expect(listPlaces(shelf)).toEqual([other, PLACE]);
    forgetPlace(shelf, PLACE.code);
    expect(listPlaces(shelf)).toEqual([other]);
  });

  it('last as long as the page where the device keeps nothing', () => {
    const shelf = createToyShelf(0);
    expect(keepPlace(shelf, PLACE)).toBe(false);
    expect(readPlace(shelf, PLACE.code)).toEqual(PLACE);
    expect(listPlaces(shelf)).toEqual([PLACE]);
    forgetPlace(shelf, PLACE.code);
    expect(readPlace(shelf, PLACE.code)).toBeNull();
  });

  it.each(['{', '{"v":2}', JSON.stringify({ v: 1, ...PLACE, pin: 'four' })])(
    'are passed over where %s stands in their place',
    (text) => {
      const shelf = createToyShelf();
      shelf.set(`flamewright.class-seat.${PLACE.code}`, text);
      expect(readPlace(shelf, PLACE.code)).toBeNull();
      expect(listPlaces(shelf)).toEqual([]);
    },
  );
});

describe('the shelf of a seat', () => {
  it('has nothing to do with one’s own work, nor with another seat’s', () => {
    const device = createToyShelf();
    device.set('flamewright.work.job.a-job', 'own');
    const shelf = shelfOfSeat(device, PLACE);
    const neighbour = shelfOfSeat(device, { ...PLACE, seat: 4 });
    shelf.set('flamewright.work.job.a-job', 'in class');
    expect(device.get('flamewright.work.job.a-job')).toBe('own');
    expect(neighbour.keys()).toEqual([]);
    expect(shelf.keys()).toEqual(['flamewright.work.job.a-job']);
    clearShelf(shelf);
    expect(device.keys()).toEqual(['flamewright.work.job.a-job']);
  });

  it('holds for as long as the page what the device has no room for, and says so', () => {
    const device = createToyShelf(20);
    const shelf = shelfOfSeat(device, PLACE);
    expect(() => shelf.set('a', 'text')).toThrow('full');
    expect(shelf.get('a')).toBe('text');
    expect(shelf.keys()).toEqual(['a']);
    device.room = 1000;
    shelf.set('a', 'newer');
    expect(shelfOfSeat(device, PLACE).get('a')).toBe('newer');
  });
});

describe('the book of a seat', () => {
  it('counts a try for each work that was begun, and none twice', () => {
    const first = bookOfTry(NEW_BOOK, '2026-11-29T09:00:00.000Z');
    expect(first.attempt).toBe(1);
    expect(bookOfTry(first, '2026-11-29T09:00:00.000Z')).toBe(first);
    const over = { ...first, outcome: 0.5, handedIn: true };
    expect(bookOfTry(over, '2026-11-29T09:30:00.000Z')).toMatchObject({
      attempt: 2,
      outcome: null,
      handedIn: false,
    });
  });

  it('comes back from the shelf, and begins anew where it cannot be read', () => {
    const shelf = createToyShelf();
    const book = { ...NEW_BOOK, attempt: 2, asksHelp: true, hintsRead: [3] };
    keepBook(shelf, book);
    expect(readBook(shelf)).toEqual(book);
    shelf.set('flamewright.class-book', '{"attempt":-1}');
    expect(readBook(shelf)).toEqual(NEW_BOOK);
  });
});
