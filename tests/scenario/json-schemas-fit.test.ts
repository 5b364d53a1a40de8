import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { z } from 'zod';

const scenarios = new URL('../../scenarios/', import.meta.url);
const FOLDERS = [
  ['starts', 'scenario.json'],
  ['jobs', 'job.json'],
  ['drills', 'drill.json'],
  ['lessons', 'lesson.json'],
] as const;

/** What an editor makes of the file that ships: the JSON Schema read back, not the one it came from. */
describe.each(FOLDERS)('the files of %s', (folder, schemaName) => {
  const text = readFileSync(new URL(`schema/${schemaName}`, scenarios), 'utf8');
  const schema = z.fromJSONSchema(JSON.parse(text));
  const files = readdirSync(new URL(`${folder}/`, scenarios));

  it.each(files)('%s fits the schema that it names in its first line', (file) => {
    const written = readFileSync(new URL(`${folder}/${file}`, scenarios), 'utf8');
    expect(written.split('\n')[0]).toBe(`# yaml-language-server: $schema=../schema/${schemaName}`);
    const read = schema.safeParse(parse(written));
    expect(read.error?.issues ?? []).toEqual([]);
  });
  it('would not fit with a key that nobody knows, or without their plant', () => {
    const [file = ''] = files;
    const sound = parse(readFileSync(new URL(`${folder}/${file}`, scenarios), 'utf8'));
    expect(schema.safeParse({ ...sound, colour: 'grey' }).success).toBe(false);
    expect(schema.safeParse({ ...sound, plant: undefined }).success).toBe(false);
  });
});
