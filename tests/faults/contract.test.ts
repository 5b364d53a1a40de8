/** What every fault of the catalogue is held to, on every plant that it applies to. */
import { describe, expect, it } from 'vitest';
import type { PlantFile } from '../../src/engine/index.ts';
import { FAULTS, type Fault, type FaultSubject, faultsOf } from '../../src/faults/index.ts';
import { findFieldIssues } from '../../src/field/index.ts';
import { checkGasTrain } from '../../src/plant/gas/index.ts';
import { UNITS } from '../../src/quantity/index.ts';
import { plantSchema } from '../../src/scenario/plant-schema.ts';
import { library } from '../support/library.ts';

const copyOf = <T>(value: T): T => JSON.parse(JSON.stringify(value)) as T;
const severitiesOf = ({ severity: { low, typical, high } }: Fault) => [low, typical, high];

describe('the catalogue', () => {
  it('has seventy faults or more, each of them on some plant, each with a name of its own', () => {
    expect(FAULTS.length).toBeGreaterThanOrEqual(70);
    expect(new Set(FAULTS.map(({ id }) => id)).size).toBe(FAULTS.length);
    const idle = FAULTS.filter((fault) => !library.plants.some((plant) => fault.appliesTo(plant)));
    expect(idle.map(({ id }) => id)).toEqual([]);
  });

  it.each(FAULTS.map((fault) => [fault.id, fault] as const))(
    '%s has a mechanism, a range in a unit, onsets, a repair and a weight',
    (_id, fault) => {
      const { low, typical, high, unit } = fault.severity;
      expect(low).toBeGreaterThan(0);
      expect(typical).toBeGreaterThanOrEqual(low);
      expect(high).toBeGreaterThanOrEqual(typical);
      expect(UNITS).toContain(unit);
      expect(fault.onsets).toContain('start');
      expect(fault.priorWeight).toBeGreaterThan(0);
      for (const text of [fault.component, fault.mechanism, fault.repair]) {
        expect(text).toMatch(/^\S.{2,}\S$/);
      }
    },
  );
});

describe.each(library.plants.map((plant) => [plant.id, plant] as const))('%s', (_id, plant) => {
  const faults = faultsOf(plant);

  it('offers faults of every family', () => {
    expect(new Set(faults.map(({ family }) => family)).size).toBeGreaterThanOrEqual(7);
    expect(faults.length).toBeGreaterThanOrEqual(60);
  });

  it.each(faults.map((fault) => [fault.id, fault] as const))(
    '%s: severity zero changes nothing',
    (_fault, fault) => {
      const changed = copyOf(plant);
      fault.apply(changed, 0);
      expect(changed).toEqual(plant);
    },
  );

  it.each(faults.map((fault) => [fault.id, fault] as const))(
    '%s: changes one section and leaves a plant that its schema allows',
    (_fault, fault) => {
      for (const severity of severitiesOf(fault)) {
        const changed = copyOf(plant);
        fault.apply(changed, severity);
        expect(sectionsChanged(plant, changed)).toHaveLength(1);
        expect(issuesOf(changed)).toEqual([]);
      }
    },
  );
});

function sectionsChanged(before: PlantFile, after: PlantFile): string[] {
  const sections = Object.keys(before) as (keyof FaultSubject)[];
  return sections.filter((key) => JSON.stringify(before[key]) !== JSON.stringify(after[key]));
}

function issuesOf(plant: PlantFile): unknown[] {
  const fitted = plantSchema.safeParse(plant);
  const issues = fitted.success ? [] : fitted.error.issues;
  return [...issues, ...checkGasTrain(plant.gasTrain), ...findFieldIssues(plant)];
}
