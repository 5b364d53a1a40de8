import library from 'virtual:library';
import { describe, expect, it } from 'vitest';
import { wiringFacts } from '../../../src/app/session/wiring-facts.ts';

function elementsOf(id: string) {
  const plant = library.plants.find((each) => each.id === id);
  if (plant === undefined) throw new Error(`no plant ${id}`);
  return new Map(wiringFacts(plant).elements.map((element) => [element.name, element]));
}

describe('the contacts of a plant, as the ladder draws them', () => {
  it('break where pressing or a rise opens them, make where it closes them', () => {
    const dairy = elementsOf('dairy');
    for (const name of ['emergency-stop', 'high-limit', 'high-gas', 'operating-control']) {
      expect([name, dairy.get(name)?.breaks]).toEqual([name, true]);
    }
    for (const name of [
      'airflow',
      'low-gas',
      'first-low-water',
      'reset-button',
      'fan-relay.contact',
    ]) {
      expect([name, dairy.get(name)?.breaks]).toEqual([name, undefined]);
    }
  });

  it('say what moves them', () => {
    expect(elementsOf('school').get('high-limit')?.operator).toBe('temperature');
    expect(elementsOf('dairy').get('high-limit')?.operator).toBe('pressure');
    expect(elementsOf('laundry').get('feed-control.pump')?.operator).toBe('level');
  });

  it('feed no water into a boiler that is always full', () => {
    expect(elementsOf('school').get('feed-pump')?.called).toBe('circulating-pump');
    expect(elementsOf('dairy').get('feed-pump')?.called).toBeUndefined();
  });
});
