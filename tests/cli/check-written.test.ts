import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { runCommand } from '../../src/cli/commands/index.ts';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const folder = mkdtempSync(join(tmpdir(), 'written-'));

function shipped(name: string): string {
  return readFileSync(join(ROOT, 'scenarios', 'quiz', `${name}.yaml`), 'utf8');
}

/** What `check` says of a shipped file in which one thing was changed. */
function said(name: string, from: string, to: string): string {
  const text = shipped(name);
  expect(text.split(from).length, `"${from}"`).toBeGreaterThan(1);
  const file = join(folder, 'quiz-items.yaml');
  writeFileSync(file, text.replace(from, to).replace(/^id: .*$/m, 'id: another-name'));
  const { exit, text: out } = outcomeOf(['check', file]);
  expect(exit).toBe(2);
  return out;
}

function outcomeOf(words: readonly string[]): { readonly exit: number; readonly text: string } {
  const outcome = runCommand(words, ROOT);
  return { exit: outcome.exit, text: `${outcome.stdout}${outcome.stderr}` };
}

describe('written quiz items', () => {
  it('that are shipped are in order, lint and proof included', () => {
    const files = ['before-hands-go-in', 'what-each-step-is-for', 'read-at-the-dairy'].map((name) =>
      join(ROOT, 'scenarios', 'quiz', `${name}.yaml`),
    );
    expect(outcomeOf(['check', ...files])).toMatchObject({ exit: 0 });
  });

  it.each([
    [
      'a question turned round',
      'what-each-step-is-for',
      'Which of these has to be seen',
      'Which of these need not be seen',
      /items\.0\.question: ask for what is so/,
    ],
    [
      'an option that stands out by its length',
      'what-each-step-is-for',
      'The airflow switch open, since the fan stands still.',
      'Open.',
      /one is so much longer than another/,
    ],
    [
      'a reason that gives none',
      'before-hands-go-in',
      'A burner that does not start may be held by any limit. The terminal may be live all the same,\n        since the panel says what the sequence does and says nothing of the wire.',
      'Wrong.',
      /items\.0\.why\.2/,
    ],
  ])('with %s are refused where it stands', (_what, name, from, to, message) => {
    expect(said(name, from, to)).toMatch(message);
  });

  it.each([
    [
      'too little read to tell',
      '        - { check: continuity, place: "pilot-valve:1", other: "pilot-valve:2", when: isolated }\n',
      '',
      /causes\[\d\]: .*% of what it may be/,
    ],
    [
      'a check that the plant has not',
      'check: look, place: spark,',
      'check: look, place: crystal ball,',
      /readings\[1\].*there is no such check at that moment; this plant has it at no moment/,
    ],
    [
      'a moment at which there is no such check',
      'place: spark, when: pilot trial',
      'place: spark, when: sunday',
      /readings\[1\].*this plant has it .*pilot trial/,
    ],
    [
      'a moment that the start does not come to',
      'place: spark, when: pilot trial',
      'place: spark, when: modulation',
      /readings\[1\].*does not come so far/,
    ],
  ])('with %s are refused where it stands', (_what, from, to, message) => {
    expect(said('read-at-the-dairy', from, to)).toMatch(message);
  });

  it.each([
    [
      'a cause for each option',
      '        - ignition transformer dead\n      readings',
      '      readings',
      /a fault for each of the 3 options/,
    ],
    [
      'the fault at the right place',
      'right: 0',
      'right: 1',
      /the fault pilot valve coil open at the place of the right option/,
    ],
    [
      'a plant where something is run',
      '    plant: dairy\n',
      '',
      /the plant on which the evidence is run/,
    ],
    [
      'a fault that there is',
      'fault: pilot valve coil open',
      'fault: pilot valve coil opened',
      /Did you mean pilot valve coil open/,
    ],
  ])('need %s', (_what, from, to, message) => {
    expect(said('read-at-the-dairy', from, to)).toMatch(message);
  });
});
