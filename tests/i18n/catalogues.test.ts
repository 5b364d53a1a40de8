import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { en } from '../../src/i18n/en/index.ts';
import { isMessage, message, sayMessage } from '../../src/i18n/index.ts';
import { ISSUE_CODES } from '../../src/scenario/index.ts';

type Catalogue = Readonly<Record<string, string>>;
const src = new URL('../../src/', import.meta.url);
const folders = readdirSync(new URL('i18n/', src), { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .map(({ name }) => name);

const placesOf = (sentence: string) => (sentence.match(/\{\w+\}/g) ?? []).sort();

/** What another language lacks, has too much, or fills in differently. */
function differences(other: Catalogue): string[] {
  const english: Catalogue = en;
  return [
    ...Object.keys(english)
      .filter((code) => !(code in other))
      .map((code) => `${code}: missing`),
    ...Object.keys(other)
      .filter((code) => !(code in english))
      .map((code) => `${code}: unknown`),
    ...Object.entries(english)
      .filter(
        ([code, sentence]) =>
          code in other && `${placesOf(sentence)}` !== `${placesOf(other[code] ?? '')}`,
      )
      .map(([code]) => `${code}: other places`),
  ];
}

describe('languages', () => {
  it.each(folders)('%s says everything that English says, with the same places', async (name) => {
    const file = await import(`../../src/i18n/${name}/index.ts`);
    expect(differences(file[name])).toEqual([]);
  });
  it('that lack a sentence, have one too many or lose a place are noticed', () => {
    const { 'issue.syntax': _, ...others } = en;
    const other = { ...others, 'issue.alias': 'alias', colour: 'grey' };
    expect(differences(other)).toEqual([
      'issue.syntax: missing',
      'colour: unknown',
      'issue.alias: other places',
    ]);
  });
  it('keep each code in one file', async () => {
    const seen = new Map<string, string>();
    for (const file of readdirSync(new URL('i18n/en/', src))) {
      if (file === 'index.ts') continue;
      const name = file.replace('.ts', '');
      const part = (await import(`../../src/i18n/en/${name}.ts`)) as Record<string, Catalogue>;
      for (const code of Object.values(part).flatMap(Object.keys)) {
        expect(seen.get(code), code).toBeUndefined();
        seen.set(code, file);
      }
    }
    expect(seen.size).toBe(Object.keys(en).length);
  });
});

describe('codes', () => {
  it('of issues all have a sentence', () => {
    expect(ISSUE_CODES.filter((code) => !isMessage(`issue.${code}`))).toEqual([]);
  });
  it.each(['scenario', 'cli', 'cli/commands'])(
    'written in src/%s all have a sentence',
    (folder) => {
      const codes = readdirSync(new URL(`${folder}/`, src))
        .filter((file) => file.endsWith('.ts'))
        .flatMap((file) => [
          ...readFileSync(new URL(`${folder}/${file}`, src), 'utf8').matchAll(
            /\b(?:phrase|message)\(\s*'([^']+)'/g,
          ),
        ])
        .map((match) => match[1] ?? '');
      expect(codes.length).toBeGreaterThan(4);
      expect(codes.filter((code) => !isMessage(code))).toEqual([]);
    },
  );
  it('that are unknown throw, for that is a mistake in the program', () => {
    expect(() => message('no.such.code')).toThrow('no.such.code');
  });
});

describe('a sentence', () => {
  it('takes phrases inside phrases and lists of words', () => {
    expect(
      sayMessage({
        code: 'issue.unknown-choice',
        params: {
          where: { code: 'issue.where', params: { path: 'a.b' } },
          found: { code: 'found.text', params: { text: 'x' } },
          expected: { code: 'expected.one-of', params: { words: ['p', 'q', 'r'] } },
          perhaps: { code: 'nothing-to-add' },
        },
      }),
    ).toBe('a.b: found "x"; expected p, q or r.');
  });
  it('does not fill in what stands inside a filled-in text', () => {
    expect(message('found.text', { text: '{text} $& {found}' })).toBe('"{text} $& {found}"');
  });
});
