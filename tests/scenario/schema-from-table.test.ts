import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { choice, flag, name, number, series } from '../../src/quantity/index.ts';
import { schemaFromTable } from '../../src/scenario/schema-from-table.ts';

const table = {
  areaM2: number('m²', 0.001, 2, 'free area'),
  lagS: number('s', 0, 10, 'lag', 0.1),
  form: choice(['round', 'square'], 'shape', 'round'),
  fitted: flag('whether it is there'),
  label: name('what it is called', 'duct'),
  angles: series('°', 0, 90, 2, 4, 'angles of the table'),
} as const;
const schema = schemaFromTable(table, { id: z.string() });
const least = { id: 'a', areaM2: 1, fitted: true, angles: [0, 90] };

describe('the schema of a parameter table', () => {
  it('fills in the defaults of the table', () => {
    expect(schema.parse(least)).toEqual({ ...least, lagS: 0.1, form: 'round', label: 'duct' });
  });
  it.each([
    ['a number below its range', { areaM2: 0.0001 }],
    ['a number above its range', { lagS: 10.1 }],
    ['no number', { areaM2: Number.NaN }],
    ['a number without end', { lagS: Number.POSITIVE_INFINITY }],
    ['a word that is no choice', { form: 'oval' }],
    ['a number for a flag', { fitted: 1 }],
    ['a name with a line break', { label: 'a\nb' }],
    ['a name that is too long', { label: 'a'.repeat(65) }],
    ['a series too short', { angles: [0] }],
    ['a series too long', { angles: [0, 1, 2, 3, 4] }],
    ['a series with a value out of range', { angles: [0, 91] }],
    ['a key that no table has', { colour: 'grey' }],
    ['a key given as nothing', { fitted: undefined }],
  ])('refuses %s', (_title, change) => {
    expect(schema.safeParse({ ...least, ...change }).success).toBe(false);
  });
  it('takes exactly what lies in range', () => {
    fc.assert(
      fc.property(fc.double(), (areaM2) => {
        const inRange = areaM2 >= table.areaM2.min && areaM2 <= table.areaM2.max;
        expect(schema.safeParse({ ...least, areaM2 }).success).toBe(inRange);
      }),
      { seed: 21, numRuns: 500 },
    );
  });
  it('tells editors range, unit, meaning and which keys may be left out', () => {
    const json = z.toJSONSchema(schema, { io: 'input', target: 'draft-7' });
    expect(json).toMatchObject({
      additionalProperties: false,
      required: ['id', 'areaM2', 'fitted', 'angles'],
      properties: {
        areaM2: { type: 'number', minimum: 0.001, maximum: 2, description: 'free area, m²' },
        lagS: { default: 0.1 },
        form: { enum: ['round', 'square'] },
        angles: { minItems: 2, maxItems: 4 },
      },
    });
  });
});
