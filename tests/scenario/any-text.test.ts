import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sayMessage } from '../../src/i18n/index.ts';
import { phraseOfIssue } from '../../src/scenario/issue.ts';
import { readYaml } from '../../src/scenario/read-yaml.ts';
import { scenarioSchema } from '../../src/scenario/scenario-schema.ts';
import { pathsOf, replaced } from './change-data.ts';
import { SOUND_SCENARIO } from './small-files.ts';

/** Whatever the text, reading it comes to a whole value or to issues that point into it. */
function expectAnAnswer(text: string): void {
  const read = readYaml(text, 'f.yaml', scenarioSchema);
  if (read.ok) return;
  expect(read.issues.length).toBeGreaterThan(0);
  const lines = text.split('\n');
  for (const issue of read.issues) {
    expect(issue.line).toBeGreaterThanOrEqual(1);
    expect(issue.line).toBeLessThanOrEqual(lines.length);
    expect(issue.column).toBeGreaterThanOrEqual(1);
    expect(issue.column).toBeLessThanOrEqual((lines[issue.line - 1] ?? '').length + 1);
    expect(sayMessage(phraseOfIssue(issue))).not.toMatch(/\{\w+\}|undefined|\[object/);
  }
}

const PIECES = [
  ...'{}[]:,-?&*!|>%@`"\'#\t\n\r \u0000\uFEFF\uD800',
  '---\n',
  '<<: ',
  '&a ',
  '*a',
  '__proto__: ',
  '.nan',
  '1e999',
  '0x1F',
  'null',
  'true',
  'at: ',
  'lockout',
  '{ cause: x }',
  '\n  - ',
  '\n    ',
];

describe('reading never throws and always answers', () => {
  it('for pieces put in anywhere and stretches left out', () => {
    const at = fc.nat(SOUND_SCENARIO.length);
    const cut = fc.record({ at, length: fc.nat(30), piece: fc.constantFrom('', ...PIECES) });
    fc.assert(
      fc.property(fc.array(cut, { minLength: 1, maxLength: 4 }), (cuts) => {
        let text = SOUND_SCENARIO;
        for (const { at: from, length, piece } of cuts) {
          text = text.slice(0, from) + piece + text.slice(from + length);
        }
        expectAnAnswer(text);
      }),
      { seed: 4711, numRuns: 500 },
    );
  });
  it('for pieces strung together', () => {
    fc.assert(
      fc.property(fc.array(fc.constantFrom(...PIECES), { maxLength: 40 }), (pieces) => {
        expectAnAnswer(pieces.join(''));
      }),
      { seed: 4712, numRuns: 500 },
    );
  });
  it('for any value in the place of any other', () => {
    const paths = pathsOf(JSON.parse(sound()));
    fc.assert(
      fc.property(fc.constantFrom(...paths), fc.jsonValue({ maxDepth: 3 }), (path, value) => {
        expectAnAnswer(JSON.stringify(replaced(JSON.parse(sound()), path, value)));
      }),
      { seed: 4713, numRuns: 500 },
    );
  });
});

function sound(): string {
  const read = readYaml(SOUND_SCENARIO, 'f.yaml', scenarioSchema);
  return read.ok ? JSON.stringify(read.value) : '{}';
}
