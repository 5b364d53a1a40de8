import library from 'virtual:library';
import { describe, expect, it } from 'vitest';
import { equipmentOf } from '../../../src/app/reading/equipment.ts';
import { openStage } from '../../../src/app/session/stage.ts';
import { wiringFacts } from '../../../src/app/session/wiring-facts.ts';
import { createRun } from '../../../src/engine/index.ts';

const STARTS = {
  dairy: 'healthy-start',
  laundry: 'laundry-healthy-start',
  school: 'school-healthy-start',
} as const;

function factsOf(plant: keyof typeof STARTS) {
  const stage = openStage(library, STARTS[plant]);
  return stage.facts(createRun(stage.setup));
}

const itemsOf = (plant: keyof typeof STARTS): string[] =>
  equipmentOf(factsOf(plant)).flatMap(({ items }) => items.map(({ id }) => id));

describe('what the page shows of a plant', () => {
  it('of a drive, a pilot and a water level only where the plant has them', () => {
    const [dairy, laundry, school] = [itemsOf('dairy'), itemsOf('laundry'), itemsOf('school')];
    for (const id of ['fan.frequency', 'fan.feedback']) {
      expect(dairy).toContain(id);
      expect(laundry).not.toContain(id);
    }
    expect(laundry).toContain('pilot.intensity');
    for (const id of ['pilot.intensity', 'vessel.level', 'vessel.steam', 'fuel-valve.feedback']) {
      expect(school).not.toContain(id);
    }
    expect(school).toContain('vessel.temperature');
  });

  it('of terminals only those that the plant has', () => {
    const [dairy, laundry, school] = [itemsOf('dairy'), itemsOf('laundry'), itemsOf('school')];
    expect(dairy).toContain('input.upstreamValveClosed');
    expect(laundry).not.toContain('input.upstreamValveClosed');
    expect(laundry).not.toContain('input.interspaceFull');
    expect(school).toContain('input.interspaceFull');
    expect(school).not.toContain('input.waterAboveFirst');
    expect(school).not.toContain('input.speedOnCurve');
  });

  it.each(['dairy', 'laundry', 'school'] as const)(
    'has a name for everything in the list of the %s',
    (plant) => {
      for (const { items } of equipmentOf(factsOf(plant))) {
        for (const { id, name } of items) expect([id, name]).not.toEqual([id, id]);
      }
    },
  );

  it.each(['dairy', 'laundry', 'school'] as const)(
    'keeps the places of the frames for the %s',
    (plant) => {
      const stage = openStage(library, STARTS[plant]);
      const run = createRun(stage.setup);
      const { channels } = stage.facts(run);
      expect(channels).toHaveLength(run.channels.length);
      channels.forEach(({ id }, place) => {
        if (!id.startsWith('absent.')) expect(id).toBe(run.channels[place]?.id);
      });
    },
  );
});

describe('the wiring for the ladder', () => {
  it.each(library.plants.map((plant) => [plant.id, plant] as const))(
    'of %s has every element of the rungs in the order of its bits',
    (_id, plant) => {
      const { rungs, wires, elements, sources } = wiringFacts(plant);
      expect(elements.map(({ name }) => name)).toEqual(
        rungs.flatMap((parts) => parts.filter((_part, i) => i % 2 === 1)),
      );
      for (const { live, neutral } of sources) {
        expect(wires).toContain(live);
        expect(wires).toContain(neutral);
      }
    },
  );

  it('tells what moves a contact', () => {
    const plant = library.plants.find(({ id }) => id === 'laundry');
    if (plant === undefined) throw new Error('no laundry');
    const operators = new Map(
      wiringFacts(plant).elements.map(({ name, operator }) => [name, operator]),
    );
    expect(operators.get('emergency-stop')).toBe('stop button');
    expect(operators.get('high-limit')).toBe('pressure');
    expect(operators.get('fan-relay.contact')).toBe('relay');
    expect(operators.get('fan-relay.coil')).toBeUndefined();
  });
});
