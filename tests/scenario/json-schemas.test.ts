import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { jsonSchemas } from '../../src/scenario/json-schemas.ts';

const folder = new URL('../../scenarios/', import.meta.url);
const textOf = (path: string) => readFileSync(new URL(path, folder), 'utf8');

describe('the JSON Schemas that ship for editors', () => {
  it('are what flamewright schema would write now', () => {
    const shipped = readdirSync(new URL('schema/', folder)).sort();
    expect(shipped).toEqual(Object.keys(jsonSchemas()).sort());
    for (const [name, text] of Object.entries(jsonSchemas())) {
      expect(textOf(`schema/${name}`), `${name}: run npm run flamewright -- schema`).toBe(text);
    }
  });
});
