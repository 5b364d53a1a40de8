/** What ends the faults, and what a person may act on: the same whatever is wrong. */
import { describe, expect, it } from 'vitest';
import type { PlantFile } from '../../src/engine/index.ts';
import {
  applyFaults,
  FAULTS,
  type Fault,
  type FaultSubject,
  faultsOf,
  fuseOf,
  HAND_ACTS,
  leakPlacesOf,
  partsOf,
  REPAIR_WAYS,
  remediesOf,
  settingsOf,
} from '../../src/faults/index.ts';
import { findFieldIssues } from '../../src/field/index.ts';
import { library } from '../support/library.ts';

const copyOf = <T>(value: T): T => JSON.parse(JSON.stringify(value)) as T;

function withFault(plant: PlantFile, fault: Fault): FaultSubject {
  const faulty = copyOf(plant);
  applyFaults(faulty, [{ fault: fault.id, severity: fault.severity.high }]);
  return faulty;
}

const isRepair = (way: string) => (REPAIR_WAYS as readonly string[]).includes(way);
const isHandAct = (way: string) => (HAND_ACTS as readonly string[]).includes(way);

describe.each(library.plants.map((plant) => [plant.id, plant] as const))('%s', (_id, plant) => {
  const faults = faultsOf(plant);
  const parts = partsOf(plant);
  const settings = settingsOf(plant);
  const partNamed = (name: string) => parts.find(({ part }) => part === name);

  it.each(faults.map((fault) => [fault.id, fault] as const))(
    '%s ends by an act that the plant offers on that part',
    (_fault, fault) => {
      const remedies = remediesOf(fault, plant);
      expect(remedies.length).toBeGreaterThan(0);
      for (const { part, way, setting } of remedies) {
        const on = partNamed(part);
        expect(on, part).toBeDefined();
        if (isRepair(way)) expect(on?.ways).toContain(way);
        else if (way === 'adjust') {
          expect(settings.map((one) => [one.part, one.setting])).toContainEqual([part, setting]);
        } else expect(isHandAct(way)).toBe(true);
      }
    },
  );

  it.each(faults.map((fault) => [fault.id, fault] as const))(
    '%s is not given away by the list of parts, dials or joints',
    (_fault, fault) => {
      const faulty = withFault(plant, fault);
      expect(partsOf(faulty)).toEqual(parts);
      expect(leakPlacesOf(faulty)).toEqual(leakPlacesOf(plant));
      const bare = (subject: FaultSubject) =>
        settingsOf(subject).map(({ value: _, ...rest }) => rest);
      expect(bare(faulty)).toEqual(bare(plant));
    },
  );

  it.each(faults.map((fault) => [fault.id, fault] as const))(
    '%s moves no dial but one that ends it',
    (_fault, fault) => {
      const own = remediesOf(fault, plant).filter(({ way }) => way === 'adjust');
      const moved = settingsOf(withFault(plant, fault)).filter(
        ({ value }, i) => value !== settings[i]?.value,
      );
      for (const { part, setting } of moved) {
        expect(own).toContainEqual({ part, setting, way: 'adjust' });
      }
    },
  );

  it('has a name of its own for each part, with minutes for each of its ways', () => {
    expect(new Set(parts.map(({ part }) => part)).size).toBe(parts.length);
    for (const { ways, minutes, cost } of parts) {
      expect(Object.keys(minutes).sort()).toEqual([...ways].sort());
      for (const way of ways) expect(minutes[way]).toBeGreaterThan(0);
      expect(cost).toBeGreaterThanOrEqual(0);
    }
  });

  it('offers parts on which nothing of the catalogue is ever mended', () => {
    const mended = new Set(
      faults.flatMap((fault) => remediesOf(fault, plant).map(({ part, way }) => `${part} ${way}`)),
    );
    const offered = parts.flatMap(({ part, ways }) => ways.map((way) => `${part} ${way}`));
    expect(offered.filter((one) => !mended.has(one)).length).toBeGreaterThan(20);
  });

  it('knows each of its fuses by a part', () => {
    const known = parts.flatMap(({ part }) => fuseOf(plant, part) ?? []);
    expect(known).toEqual(plant.wiring.fuses.map(({ id }) => id));
  });

  it('stands as its schema allows after a fault of any dial', () => {
    for (const fault of faults) expect(findFieldIssues(withFault(plant, fault))).toEqual([]);
  });
});

describe('opening', () => {
  it.each(library.plants.map((plant) => [plant.id, plant] as const))(
    'of the %s: gas parts are those that the gas goes through, and no electrical work opens gas',
    (_id, plant) => {
      const parts = partsOf(plant);
      const opens = (name: string) => parts.find(({ part }) => part === name)?.opens;
      expect(opens('gas regulator')).toBe('gas');
      expect(opens('upstream valve')).toBe('gas');
      expect(opens('upstream valve coil')).toBeNull();
      expect(opens('gas train pipework')).toBeNull();
      expect(parts.filter(({ electrical, opens: what }) => electrical && what !== null)).toEqual(
        [],
      );
    },
  );

  it('air in the line ends by purging, and opens nothing', () => {
    const fault = FAULTS.find(({ id }) => id === 'air in the gas line');
    expect(fault?.remedies).toEqual([{ part: 'gas train pipework', way: 'purge air' }]);
  });
});
