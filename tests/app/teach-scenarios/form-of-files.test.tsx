/** The form over every shipped file, and over new ones. */

import fc from 'fast-check';
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it } from 'vitest';
import { factsOf } from '../../../src/app/teach-scenarios/author-host.ts';
import {
  AUTHOR_KINDS,
  type AuthorKind,
  pathOfFile,
} from '../../../src/app/teach-scenarios/author-kinds.ts';
import { checkFile } from '../../../src/app/teach-scenarios/check-file.ts';
import type { FileSchema } from '../../../src/app/teach-scenarios/file-schema.ts';
import { Field } from '../../../src/app/teach-scenarios/form/field.tsx';
import { FileForm } from '../../../src/app/teach-scenarios/form/file-form.tsx';
import {
  FormProvider,
  type FormWays,
  labelOf,
} from '../../../src/app/teach-scenarios/form/form-context.ts';
import { FORM_SECTIONS } from '../../../src/app/teach-scenarios/form/form-sections.ts';
import { pathOfText } from '../../../src/app/teach-scenarios/form/path-of-text.ts';
import { startingValue } from '../../../src/app/teach-scenarios/form/starting-value.ts';
import { keyOrderOf } from '../../../src/app/teach-scenarios/key-order.ts';
import { newFile } from '../../../src/app/teach-scenarios/new-file.ts';
import { shippedFiles } from '../../../src/app/teach-scenarios/shipped-files.ts';
import { shippedText } from '../../../src/app/teach-scenarios/shipped-texts.ts';
import {
  dataIn,
  editFile,
  editPlain,
  type FileEdit,
  isGroup,
  type Path,
  type Plain,
  type PlainGroup,
  pathText,
} from '../../../src/scenario/editing/index.ts';
import { library } from '../../support/library.ts';

const facts = factsOf(library);
const SHIPPED = AUTHOR_KINDS.flatMap((kind) =>
  shippedFiles(kind).map(({ id }) => ({ kind, id, text: shippedText(kind, id) ?? '' })),
);

function formOf(kind: AuthorKind, data: PlainGroup, edit: FormWays['edit']): string {
  const plant = facts.plants.find(({ id }) => id === data.plant) ?? null;
  const ways: FormWays = {
    facts,
    plant,
    data,
    issues: new Map(),
    edit,
    renderField: (props) => <Field {...props} />,
  };
  return renderToStaticMarkup(
    <FormProvider value={ways}>
      <FileForm kind={kind} waits={false} readOnly={false} />
    </FormProvider>,
  );
}

/** Every key of a schema, with the way to it. */
function keysIn(schema: FileSchema, path: Path = []): Path[] {
  const branches = [...(schema.oneOf ?? []), ...(schema.anyOf ?? [])];
  return [
    ...Object.entries(schema.properties ?? {}).flatMap(([key, inner]) => [
      [...path, key],
      ...keysIn(inner, [...path, key]),
    ]),
    ...(schema.items === undefined ? [] : keysIn(schema.items, [...path, 0])),
    ...branches.flatMap((branch) => keysIn(branch, path)),
  ];
}

describe('the form', () => {
  it.each(AUTHOR_KINDS)('of a %s has each key of the file once', (kind) => {
    const keys = FORM_SECTIONS[kind].flatMap((section) => section.keys);
    expect([...keys].sort()).toEqual(Object.keys(facts.schemas[kind].properties ?? {}).sort());
  });

  it.each(AUTHOR_KINDS)('of a %s has a name for every key at any depth', (kind) => {
    const paths = keysIn(facts.schemas[kind]);
    expect(paths.length).toBeGreaterThan(10);
    expect(paths.filter((path) => labelOf(path) === path.at(-1)).map(pathText)).toEqual([]);
  });

  it('opens every shipped file, shows what is in it and changes nothing by that', () => {
    expect(SHIPPED.length).toBeGreaterThan(100);
    for (const { kind, id, text } of SHIPPED) {
      const data = dataIn(text) as PlainGroup;
      expect(data.id, pathOfFile(kind, id)).toBe(id);
      const html = formOf(kind, data, () => expect.unreachable(id));
      const shown = html.toLowerCase().replaceAll('&#x27;', "'");
      expect(html.includes(`value="${id}"`), id).toBe(true);
      for (const { fault } of (data.faults ?? []) as readonly { readonly fault: string }[]) {
        expect(shown.includes(fault.toLowerCase()), `${id}: ${fault}`).toBe(true);
      }
      const key = Object.keys(data)[2] ?? '';
      const same: FileEdit = { do: 'set', path: [key], value: data[key] ?? null };
      expect(editFile(text, same)?.text).toBe(text);
    }
  }, 120_000);

  it('finds the field of an issue by its path', () => {
    for (const path of [['faults', 0, 'severity'], ['id'], ['steps', 12, 'ask', 'why', 2], []]) {
      expect(pathOfText(pathText(path))).toEqual(path);
    }
  });
});

describe('a new file', () => {
  it.each(AUTHOR_KINDS)(
    'of the kind %s is in order, whatever plant and fault',
    (kind) => {
      for (const plant of facts.plants) {
        for (const fault of [null, ...plant.faults]) {
          const text = newFile({ kind, id: 'new-one', title: 'New: "one" #1', plant, fault });
          const { issues, isCase } = checkFile(kind, text, library).checked;
          expect(issues, `${plant.id}, ${fault?.id}`).toEqual([]);
          if (kind !== 'quiz' && kind !== 'lesson') {
            expect(isCase).toBe(fault !== null || kind === 'job');
          }
        }
      }
    },
    120_000,
  );
});

/** Of the schema, a change that a field of the form can make. */
const trials = fc.record({
  file: fc.nat({ max: SHIPPED.length - 1 }),
  at: fc.nat({ max: 1e6 }),
  act: fc.constantFrom('set', 'add', 'remove', 'insert', 'swap'),
  value: fc.oneof(
    fc.lorem({ maxCount: 25 }),
    fc.constantFrom('', 'lens dirty', 'dairy', 'purge', 'yes', 'at 5', '#1'),
    fc.integer({ min: -10, max: 400 }),
    fc.double({ min: 0, max: 2, noNaN: true }).map((value) => value + 0),
    fc.boolean(),
  ),
});

function placesOf(data: Plain, path: Path = []): { path: Path; value: Plain }[] {
  const inner =
    typeof data === 'object' && data !== null
      ? Object.entries(data).flatMap(([key, each]) =>
          placesOf(each as Plain, [...path, Array.isArray(data) ? Number(key) : key]),
        )
      : [];
  return [{ path, value: data }, ...inner];
}

describe('a change by the form', () => {
  it('is judged like the same file written anew: same mistakes at the same paths, or none', () => {
    fc.assert(
      fc.property(trials, ({ file, at, act, value }) => {
        const { kind, text } = SHIPPED[file] ?? { kind: 'start' as const, text: '' };
        const data = dataIn(text) as Plain;
        const places = placesOf(data);
        const pick = (of: typeof places) => of[at % Math.max(1, of.length)];
        const schema = facts.schemas[kind];
        const leaf = pick(places.filter((place) => typeof place.value !== 'object'));
        const list = pick(
          places.filter((place) => Array.isArray(place.value) && place.value.length > 1),
        );
        const missing = pick(
          Object.keys(schema.properties ?? {})
            .filter((key) => isGroup(data) && !Object.hasOwn(data, key))
            .map((key) => ({ path: [key], value: startingValue(schema.properties?.[key] ?? {}) })),
        );
        const edits: Readonly<Record<typeof act, FileEdit | null>> = {
          set: leaf === undefined ? null : { do: 'set', path: leaf.path, value },
          add: missing === undefined ? null : { do: 'set', ...missing },
          remove: leaf === undefined ? null : { do: 'remove', path: leaf.path },
          insert: list && {
            do: 'insert',
            path: list.path,
            index: 1,
            value: (list.value as Plain[])[0] ?? '',
          },
          swap: list && { do: 'swap', path: list.path, index: 0 },
        } as never;
        const edit = edits[act];
        if (edit === null || edit === undefined) return;
        const edited = editFile(text, edit, keyOrderOf(schema));
        expect(edited?.inPlace).toBe(true);
        const judged = (of: string) =>
          checkFile(kind, of, library)
            .checked.issues.map(({ path, says }) => `${path}: ${JSON.stringify(says)}`)
            .sort();
        // JSON is YAML too.
        expect(judged(edited?.text ?? '')).toEqual(judged(JSON.stringify(editPlain(data, edit))));
      }),
      { seed: 72, numRuns: 400 },
    );
  }, 120_000);
});
