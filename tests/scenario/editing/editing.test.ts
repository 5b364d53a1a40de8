import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  dataIn,
  editFile,
  editPlain,
  type FileEdit,
  isGroup,
  type Path,
  type Plain,
  plainAt,
} from '../../../src/scenario/editing/index.ts';

const scenarios = new URL('../../../scenarios/', import.meta.url);
const FILES = ['starts', 'jobs', 'drills', 'lessons', 'quiz'].flatMap((folder) =>
  readdirSync(new URL(`${folder}/`, scenarios)).map((file) => ({
    path: `${folder}/${file}`,
    text: readFileSync(new URL(`${folder}/${file}`, scenarios), 'utf8'),
  })),
);

/** Every place of a file, from the top down. */
function placesOf(data: Plain, path: Path = []): { path: Path; value: Plain }[] {
  const inner = Array.isArray(data)
    ? data.flatMap((each, i) => placesOf(each, [...path, i]))
    : isGroup(data)
      ? Object.entries(data).flatMap(([key, each]) => placesOf(each, [...path, key]))
      : [];
  return [...(path.length > 0 ? [{ path, value: data }] : []), ...inner];
}

/** Each key of the outermost group with all its lines, up to the next one. */
function partsOf(text: string): Map<string, string> {
  const parts = new Map<string, string>();
  let name = '';
  for (const line of text.split(/(?<=\n)/)) {
    const key = /^([A-Za-z]\w*):/.exec(line)?.[1];
    if (key !== undefined) name = key;
    parts.set(name, (parts.get(name) ?? '') + line);
  }
  return parts;
}

const COMMENT = /# note \d+/g;
/** Remarks where people put them: above a key, above an entry, behind a value. */
function withRemarks(text: string, choose: readonly number[]): string {
  let count = 0;
  const lines = text.split('\n').map((line, i) => {
    if (choose[i % choose.length] !== 1) return line;
    const indent = /^(\s*)(?:- |[A-Za-z]+:)/.exec(line)?.[1];
    if (indent === undefined) return line;
    count += 1;
    const short = /^\s*(?:- )?[A-Za-z]+: (?:\w+|\{[^}]*\})$/.test(line);
    return short && i % 2 === 0 ? `${line} # note ${count}` : `${indent}# note ${count}\n${line}`;
  });
  const noted = lines.join('\n');
  return JSON.stringify(dataIn(noted)) === JSON.stringify(dataIn(text)) ? noted : text;
}

const texts = fc.oneof(
  fc.string({ maxLength: 40 }),
  fc.string({ unit: 'grapheme', maxLength: 160 }),
  fc.constantFrom('true', 'null', '12', '0,5', 'a: b', 'x # y', '- no', 'it’s so', '', ' ', '&a'),
  fc.lorem({ maxCount: 40 }),
  fc.array(fc.lorem({ maxCount: 30 }), { maxLength: 3 }).map((all) => all.join('\n')),
);
const scalars = fc.oneof(
  texts.filter(
    (text) => !/[\p{Cc}\p{Cs}\uFEFF\uFFFD\u2028\u2029]/u.test(text.replaceAll('\n', '')),
  ),
  fc.integer({ min: -1e9, max: 1e9 }),
  fc.double({ noNaN: true, noDefaultInfinity: true }).map((value) => value + 0),
  fc.boolean(),
);
const values: fc.Arbitrary<Plain> = fc.oneof(
  { weight: 4, arbitrary: scalars },
  fc.dictionary(fc.stringMatching(/^[a-z]{1,9}$/), scalars, { maxKeys: 4 }),
  fc.array(scalars, { maxLength: 4 }),
) as fc.Arbitrary<Plain>;

interface Trial {
  readonly file: number;
  readonly at: number;
  readonly kind: FileEdit['do'] | 'add';
  readonly value: Plain;
  readonly remarks: readonly number[];
}
const trials = fc.record<Trial>({
  file: fc.nat({ max: FILES.length - 1 }),
  at: fc.nat({ max: 100_000 }),
  kind: fc.constantFrom('set', 'remove', 'insert', 'swap', 'add'),
  value: values,
  remarks: fc.array(fc.integer({ min: 0, max: 3 }), { minLength: 7, maxLength: 40 }),
});

function editOf(data: Plain, { at, kind, value }: Trial): FileEdit | null {
  const places = placesOf(data);
  const pick = (of: typeof places) => of[at % Math.max(1, of.length)];
  const lists = places.filter((place) => Array.isArray(place.value));
  switch (kind) {
    case 'set': {
      const place = pick(places.filter((one) => typeof one.value !== 'object'));
      return place === undefined ? null : { do: 'set', path: place.path, value };
    }
    case 'remove': {
      const place = pick(places);
      return place === undefined ? null : { do: 'remove', path: place.path };
    }
    case 'add': {
      const group = pick([
        { path: [], value: data },
        ...places.filter((one) => isGroup(one.value)),
      ]);
      return group === undefined ? null : { do: 'set', path: [...group.path, 'added'], value };
    }
    default: {
      const list = pick(lists);
      if (list === undefined) return null;
      const { length } = list.value as readonly Plain[];
      if (kind === 'insert')
        return { do: 'insert', path: list.path, index: at % (length + 1), value };
      return length < 2 ? null : { do: 'swap', path: list.path, index: at % (length - 1) };
    }
  }
}

/** What stands behind a value is part of its line, and goes where the line goes. */
const lostWithTheirLine = (text: string, data: Plain, edit: FileEdit) =>
  edit.do !== 'remove' && !(edit.do === 'set' && typeof plainAt(data, edit.path) === 'object')
    ? 0
    : text.length;

describe('a change in a file', () => {
  it('says what it should, at its place: other keys, comments and order stay as they were', () => {
    fc.assert(
      fc.property(trials, (trial) => {
        const text = withRemarks(FILES[trial.file]?.text ?? '', trial.remarks);
        const data = dataIn(text) as Plain;
        const edit = editOf(data, trial);
        if (edit === null) return;
        const edited = editFile(text, edit);
        expect(edited?.inPlace).toBe(true);
        const after = edited?.text ?? '';
        expect(dataIn(after)).toEqual(editPlain(data, edit));
        const [before, now] = [partsOf(text), partsOf(after)];
        for (const [name, part] of before) {
          if (name !== edit.path[0] && name !== 'added')
            expect(now.get(name)).toContain(part.trimEnd());
        }
        const order = [...now.keys()].filter((name) => before.has(name));
        expect(order).toEqual([...before.keys()].filter((name) => now.has(name)));
        if (lostWithTheirLine(text, data, edit) === 0) {
          const notes = (of: string) => [...of.matchAll(COMMENT)].map(([note]) => note).sort();
          expect(notes(after)).toEqual(notes(text));
        }
      }),
      { seed: 71, numRuns: 500 },
    );
  }, 120_000);
});
