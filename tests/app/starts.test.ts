import { describe, expect, it } from 'vitest';
import {
  blindStart,
  countBlind,
  scattered,
  startsByPlant,
  startsOfLibrary,
} from '../../src/app/library/starts.ts';

describe('starts to choose from', () => {
  it('puts the healthy start first and keeps every other start with nothing wrong out of the troubled', () => {
    const { healthy, troubled } = startsOfLibrary();
    expect(healthy[0]?.id).toBe('healthy-start');
    expect(troubled.map(({ id }) => id)).toContain('jammed-damper');
    expect(troubled.map(({ id }) => id)).not.toContain('start-and-stop');
  });

  it('groups every start under its plant, each plant beginning with one that has nothing wrong', () => {
    const plants = startsByPlant();
    const { healthy, troubled } = startsOfLibrary();
    const grouped = plants.flatMap((plant) => [...plant.healthy, ...plant.troubled]);
    expect(grouped.map(({ id }) => id).sort()).toEqual(
      [...healthy, ...troubled].map(({ id }) => id).sort(),
    );
    for (const plant of plants) {
      expect([plant.plant, plant.healthy[0]?.id]).toEqual([
        plant.plant,
        expect.stringMatching(/healthy-start$/),
      ]);
      expect(plant.healthy[0]?.teaches.length).toBeGreaterThan(10);
    }
    expect(plants[0]?.healthy[0]?.id).toBe('healthy-start');
  });

  it('draws each troubled start by exactly one number', () => {
    const drawn = Array.from({ length: countBlind() }, (_, number) => blindStart(number));
    expect(new Set(drawn)).toEqual(new Set(startsOfLibrary().troubled.map(({ id }) => id)));
    expect(drawn).toHaveLength(countBlind());
  });

  it.each([1, 2, 3, 7, 12, 25, 64])('scatters %d numbers over as many places', (count) => {
    const places = Array.from({ length: count }, (_, number) => scattered(number, count));
    expect([...places].sort((a, b) => a - b)).toEqual(places.map((_, i) => i));
  });
});
