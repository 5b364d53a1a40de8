import { describe, expect, it } from 'vitest';
import { message } from '../../../src/i18n/index.ts';
import { NO_LEADS, putLead, takeLead, tapPlace } from '../../../src/view/ladder/leads.ts';
import { placesOf } from '../../../src/view/ladder/overlay.ts';
import { findPlaces, ladderPlaces } from '../../../src/view/ladder/places.ts';
import {
  nearestTerminal,
  type Terminal,
  terminalsOf,
  walkTerminals,
} from '../../../src/view/ladder/terminals.ts';
import { laidOut } from './laid-out.ts';
import { wiring } from './wiring.ts';

describe('the leads of a meter', () => {
  it('are placed by two taps, red first, and the third tap moves the red one', () => {
    const one = tapPlace(NO_LEADS, 'a:1');
    expect(one).toEqual({ from: 'a:1', to: null, hand: 'to' });
    const two = tapPlace(one, 'N');
    expect(two).toEqual({ from: 'a:1', to: 'N', hand: 'from' });
    expect(tapPlace(two, 'b:2')).toEqual({ from: 'b:2', to: 'N', hand: 'to' });
  });

  it.each([760, 1400])(
    'have a place on the drawing for every wire and terminal that can be named, %i wide',
    (width) => {
      const drawn = placesOf(laidOut(width, wiring));
      const named = ladderPlaces(wiring, message).filter(({ kind }) => kind !== 'device');
      expect(named.filter(({ id }) => !drawn.has(id)).map(({ id }) => id)).toEqual([]);
    },
  );

  it('come off by a tap where they are, and are in hand then', () => {
    const both = { from: 'a:1', to: 'N', hand: 'from' } as const;
    expect(tapPlace(both, 'N')).toEqual({ from: 'a:1', to: null, hand: 'to' });
    expect(takeLead(both, 'from')).toEqual({ from: null, to: 'N', hand: 'from' });
  });

  it('of a clamp are one: every tap moves it', () => {
    const on = tapPlace(NO_LEADS, 'a:1', true);
    expect(tapPlace(on, 'b:1', true)).toEqual({ from: 'b:1', to: null, hand: 'from' });
    expect(putLead(NO_LEADS, 'from', 'a:1', true).hand).toBe('from');
  });
});

describe('the places of a ladder', () => {
  const places = ladderPlaces(wiring, message);

  it('are every wire, every device and its two terminals, named by device and wire', () => {
    const named = new Map(places.map(({ id, label }) => [id, label]));
    expect(places.filter(({ kind }) => kind === 'wire')).toHaveLength(wiring.wires.length);
    expect(places.filter(({ kind }) => kind === 'terminal')).toHaveLength(
      2 * wiring.elements.length,
    );
    expect(named.get('fan-relay.coil:1')).toBe('fan relay, terminal 1, wire 30');
    expect(named.get('fan-relay.coil:2')).toBe('fan relay, terminal 2, wire N');
    expect(named.get('earth')).toBe('earth');
    expect(new Set(places.map(({ label }) => label)).size).toBe(places.length);
  });

  it.each([
    ['30', '30'],
    ['wire 30', '30'],
    ['fan relay', 'fan-relay.coil'],
    ['fan-relay.coil:1', 'fan-relay.coil:1'],
    ['relay fan 2', 'fan-relay.coil:2'],
    ['HIGH lim', 'high-limit'],
  ])('are found by "%s"', (question, id) => {
    expect(findPlaces(places, question)[0]?.id).toBe(id);
  });

  it('are none where the question names nothing of this ladder', () => {
    expect(findPlaces(places, 'chimney sweep')).toEqual([]);
    expect(findPlaces(places, '  ')).toHaveLength(places.length);
  });
});

describe.each([340, 982])('the terminals of a ladder %d wide', (widthPx) => {
  const terminals = terminalsOf(laidOut(widthPx, wiring));
  const idOf = (place: number): string | undefined => terminals[place]?.id;
  const placeOf = (id: string): number => terminals.findIndex((each) => each.id === id);

  it('are two of every device, and the heads of the rails', () => {
    const ids = new Set(terminals.map(({ id }) => id));
    for (const { name } of wiring.elements) {
      expect([`${name}:1`, `${name}:2`].filter((id) => ids.has(id))).toHaveLength(2);
    }
    for (const wire of ['L', 'N', 'P24', 'earth']) expect(ids.has(wire)).toBe(true);
  });

  it('are all reached by the right arrow from the first to the last, and back by the left', () => {
    let at = walkTerminals(terminals, 7, 'Home');
    const seen = [idOf(at)];
    for (let i = 1; i < terminals.length; i += 1) {
      at = walkTerminals(terminals, at, 'ArrowRight');
      seen.push(idOf(at));
    }
    expect(seen).toEqual(terminals.map(({ id }) => id));
    expect(at).toBe(walkTerminals(terminals, 0, 'End'));
    expect(walkTerminals(terminals, at, 'ArrowRight')).toBe(at);
    expect(walkTerminals(terminals, at, 'ArrowLeft')).toBe(at - 1);
  });

  it('below one another are reached by the arrows up and down, to the nearest across', () => {
    const from = placeOf('fan-relay.coil:1');
    const down = terminals[walkTerminals(terminals, from, 'ArrowDown')] as Terminal;
    const here = terminals[from] as Terminal;
    const row = terminals.filter(({ y }) => y === down.y);
    expect(down.y).toBeGreaterThan(here.y);
    expect(terminals.filter(({ y }) => y > here.y && y < down.y)).toEqual([]);
    const apart = row.map(({ x }) => Math.abs(x - here.x));
    expect(Math.abs(down.x - here.x)).toBe(Math.min(...apart));
    expect(walkTerminals(terminals, 0, 'ArrowUp')).toBe(0);
  });

  it('are taken by a pointer that is near enough, the nearer of two', () => {
    const one = terminals[placeOf('high-limit:1')] as Terminal;
    const at = { x: one.x + 9, y: one.y + 9 };
    expect(nearestTerminal(terminals, at, 20)?.id).toBe('high-limit:1');
    expect(nearestTerminal(terminals, { x: one.x, y: one.y - 21 }, 20)).toBeNull();
  });
});
