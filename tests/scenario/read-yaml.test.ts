import { describe, expect, it } from 'vitest';
import { sayMessage } from '../../src/i18n/index.ts';
import { ACTION_TYPES, actionLogSchema } from '../../src/scenario/action-schema.ts';
import { type Issue, phraseOfIssue } from '../../src/scenario/issue.ts';
import { readYaml } from '../../src/scenario/read-yaml.ts';
import { scenarioSchema } from '../../src/scenario/scenario-schema.ts';
import { broken, SOUND_SCENARIO } from './small-files.ts';

function issuesOf(text: string): readonly Issue[] {
  const read = readYaml(text, 'f.yaml', scenarioSchema);
  return read.ok ? [] : read.issues;
}
/** The actions there are is not this test's matter. */
const ACTIONS = `${ACTION_TYPES.slice(0, -1).join(', ')} or ${ACTION_TYPES.at(-1)}`;
const lineOf = (issue: Issue) =>
  `${issue.line}:${issue.column} ${sayMessage(phraseOfIssue(issue)).replace(ACTIONS, 'ACTIONS')}`;

describe('a file in order', () => {
  it('comes out whole, with its defaults filled in', () => {
    const read = readYaml(SOUND_SCENARIO, 'f.yaml', scenarioSchema);
    expect(read.ok && read.value).toMatchObject({
      id: 'small-start',
      seed: 1,
      faults: [{ fault: 'lens dirty', severity: 0.9, onset: { at: 3 } }],
      actions: [{ at: 5, do: 'call-for-heat', on: true }],
      expect: { lockout: 'none', by: 240 },
    });
  });
  it('reads the same with the line ends of another system', () => {
    const here = readYaml(SOUND_SCENARIO, 'f.yaml', scenarioSchema);
    const there = readYaml(SOUND_SCENARIO.replaceAll('\n', '\r\n'), 'f.yaml', scenarioSchema);
    expect(there.ok && there.value).toEqual(here.ok && here.value);
  });
  it('may be JSON', () => {
    const here = readYaml(SOUND_SCENARIO, 'f.yaml', scenarioSchema);
    const json = JSON.stringify(here.ok && here.value);
    const again = readYaml(json, 'f.json', scenarioSchema);
    expect(again.ok && again.value).toEqual(here.ok && here.value);
  });
});

/** What is broken, the words replaced, what stands in their place, and the one message that follows. */
const MISSPELT: readonly (readonly [string, string, string, string])[] = [
  [
    'a key',
    'title: A',
    'titel: A',
    '2:1 there is no key "titel" here; expected id, title, plant, profile, summary, teaches, caution, seed, initial, load, faults, allow, actions, until or expect. Did you mean title?',
  ],
  [
    'a key inside',
    'levelMm: 0',
    'levelmm: 0',
    '5:28 initial: there is no key "levelmm" here; expected pressureBar, waterC, hour, levelMm or load. Did you mean levelMm?',
  ],
  [
    'a key that nothing resembles',
    'until: 300',
    'until: 300\nxylophone: 1',
    '13:1 there is no key "xylophone" here; expected id, title, plant, profile, summary, teaches, caution, seed, initial, load, faults, allow, actions, until or expect.',
  ],
  [
    'a missing key',
    'plant: dairy\n',
    '',
    '1:1 plant: this is missing; expected a name of lower-case words joined by hyphens, such as healthy-start.',
  ],
  [
    'a missing key inside',
    'fault: lens dirty, ',
    '',
    '9:5 faults[0].fault: this is missing; expected the name of a fault in words, as flamewright list faults shows it.',
  ],
  [
    'the kind of an action',
    'do: call-for-heat',
    'do: call-for-heet',
    '11:18 actions[0].do: found "call-for-heet"; expected ACTIONS. Did you mean call-for-heat?',
  ],
  [
    'an action of no kind',
    'do: call-for-heat, ',
    '',
    '11:5 actions[0].do: this is missing; expected ACTIONS.',
  ],
  [
    'a field of another action',
    'on: true',
    'pressed: true, on: true',
    '11:33 actions[0]: there is no key "pressed" here; expected at, do or on.',
  ],
  [
    'a spoken flag',
    'on: true',
    'on: yes',
    '11:37 actions[0].on: found "yes"; expected true or false. Did you mean true?',
  ],
  [
    'an onset in one word',
    '{ at: 3 }',
    'strat',
    '9:48 faults[0].onset: found "strat"; expected start, or a group with the keys at, step or intermittent. Did you mean start?',
  ],
  [
    'a key of an onset',
    '{ at: 3 }',
    '{ stepp: purge }',
    '9:50 faults[0].onset: there is no key "stepp" here; expected at, step or intermittent. Did you mean step?',
  ],
  [
    'an onset that is a list',
    '{ at: 3 }',
    '[3]',
    '9:48 faults[0].onset: found a list; expected start, or a group with the keys at, step or intermittent.',
  ],
  [
    'a cause',
    'lockout: none',
    'lockout: { cause: pilot not lid, step: pilot trial }',
    '15:21 expect.lockout.cause: found "pilot not lid"; expected one of 32 known words, of which pilot not lit come near. Did you mean pilot not lit?',
  ],
  [
    'no lockout',
    'lockout: none',
    'lockout: nome',
    '15:12 expect.lockout: found "nome"; expected none, or a group with the keys cause or step. Did you mean none?',
  ],
  [
    'text for a number',
    'severity: 0.9',
    'severity: much',
    '9:36 faults[0].severity: found "much"; expected a number from -1000000000 to 1000000000.',
  ],
  [
    'a decimal comma in quotes',
    'severity: 0.9',
    'severity: "0,9"',
    '9:36 faults[0].severity: found "0,9"; expected a number from -1000000000 to 1000000000. Did you mean 0.9?',
  ],
  [
    'a decimal comma',
    'severity: 0.9',
    'severity: 0,9',
    '9:38 faults[0]: found "9" after a comma; write decimals with a point, such as 0.5.',
  ],
  [
    'no number',
    'severity: 0.9',
    'severity: .nan',
    '9:36 faults[0].severity: found .nan; expected a number from -1000000000 to 1000000000.',
  ],
  [
    'a number without end',
    'severity: 0.9',
    'severity: .inf',
    '9:36 faults[0].severity: found .inf; expected a number from -1000000000 to 1000000000.',
  ],
  [
    'a number too large to hold',
    'severity: 0.9',
    'severity: 1e999',
    '9:36 faults[0].severity: found 1e999; expected a number from -1000000000 to 1000000000.',
  ],
  [
    'a number out of range',
    'until: 300',
    'until: 30000',
    '12:8 until: found 30000; expected a number from 1 to 28800 in s.',
  ],
  [
    'a broken seed',
    'until: 300',
    'until: 300\nseed: 1.5',
    '13:7 seed: found 1.5; expected a whole number from 0 to 4294967295.',
  ],
  [
    'a negative seed',
    'until: 300',
    'until: 300\nseed: -1',
    '13:7 seed: found -1; expected a whole number from 0 to 4294967295.',
  ],
  [
    'an empty value',
    'until: 300',
    'until:',
    '12:1 until: found nothing; expected a number from 1 to 28800 in s.',
  ],
  [
    'a number for text',
    'title: A small start',
    'title: 12',
    '2:8 title: found 12; expected a line of 1 to 80 characters. Did you mean "12"?',
  ],
  [
    'an id with capitals',
    'id: small-start',
    'id: Small Start',
    '1:5 id: found "Small Start"; expected a name of lower-case words joined by hyphens, such as healthy-start.',
  ],
  [
    'an empty text',
    'summary: Nothing is wrong here.',
    'summary: ""',
    '4:10 summary: found an empty text; expected text of 1 to 2000 characters.',
  ],
  [
    'a group for a list',
    'load:\n  - { at: 100, load: 0.4 }',
    'load: { at: 100, load: 0.4 }',
    '6:7 load: found a group of keys; expected a list, one entry a line after a hyphen.',
  ],
  [
    'a list entry for a group',
    '- { at: 100, load: 0.4 }',
    '- 100',
    '7:5 load[0]: found 100; expected a group with the keys at or load.',
  ],
];

/** Files that never get as far as their schema. */
const UNREADABLE: readonly (readonly [string, string, string])[] = [
  ['nothing', '', '1:1 the file is empty.'],
  ['only a remark', '# soon\n', '1:1 the file is empty.'],
  [
    'a byte-order mark',
    `\uFEFF${SOUND_SCENARIO}`,
    '1:1 the file starts with a byte-order mark, which is invisible; save it as UTF-8 without one.',
  ],
  [
    'a zero',
    'id: a\ntitle: b\u0000',
    '2:9 here is the character U+0000, which is invisible or not text; save the file as plain UTF-8 without it.',
  ],
  [
    'a lost half of a pair',
    'id: a\uD800',
    '1:6 here is the character U+D800, which is invisible or not text; save the file as plain UTF-8 without it.',
  ],
  [
    'bytes that were no text',
    'id: \uFFFD',
    '1:5 here is the character U+FFFD, which is invisible or not text; save the file as plain UTF-8 without it.',
  ],
  [
    'a directive',
    '%YAML 1.1\n---\nid: a',
    '1:1 found "%YAML 1.1"; take this line out, a scenario file needs none that starts with %.',
  ],
  [
    'an anchor',
    'id: &here a',
    '1:11 id: found the anchor "&here"; take it out and write the values where they belong.',
  ],
  [
    'an alias',
    'id: a\ntitle: *here',
    '2:8 title: found the alias "*here"; write the values themselves in its place.',
  ],
  [
    'a tag',
    'id: !!str 3',
    '1:11 id: found the tag "tag:yaml.org,2002:str"; take it out, the kind of value is known.',
  ],
  [
    'a tab',
    'initial:\n\tload: 0',
    '2:1 this cannot be read as YAML: a tab stands where spaces should indent the line.',
  ],
  [
    'an open quote',
    'id: a\ntitle: "b\nplant: c\n',
    '2:8 this cannot be read as YAML: the quote that opens here is never closed.',
  ],
  [
    'an open bracket',
    'id: a\ninitial: { load: 0\nuntil: 3\n',
    '2:10 this cannot be read as YAML: the bracket that opens here needs a } at its end.',
  ],
  [
    'an open list',
    'id: a\nload: [1, 2\n',
    '2:7 this cannot be read as YAML: the bracket that opens here needs a ] at its end.',
  ],
  [
    'a missing colon',
    'id: a\ntitle\nuntil: 3\n',
    '2:1 this cannot be read as YAML: a key needs a colon and a space after it.',
  ],
  [
    'two keys on a line',
    'id: a\ntitle: b: c\n',
    '2:8 this cannot be read as YAML: there is a second key on this line; begin a new line, or put text with a colon in quotes.',
  ],
  [
    'a reserved mark',
    'id: @a',
    '1:5 this cannot be read as YAML: text that begins with a mark such as @ or ` must stand in quotes.',
  ],
  [
    'an unknown escape',
    'id: "\\q"',
    '1:6 this cannot be read as YAML: a backslash in double quotes begins an escape that does not exist.',
  ],
  [
    'a second document',
    'id: a\n---\nid: b',
    '2:1 this cannot be read as YAML: a line of --- begins a second document; one file holds one.',
  ],
  [
    'a list as a key',
    '? [1]\n: 2',
    '1:3 found a list where a key should be; write a word followed by a colon.',
  ],
  [
    'too much',
    `load: [${'1,'.repeat(6000)}]`,
    '1:10002 load[4997]: the file holds too much; at most 5000 keys and values.',
  ],
  [
    'too deep',
    `load: ${'['.repeat(21)}${']'.repeat(21)}`,
    '1:27 groups lie too deep inside each other; at most 20 levels.',
  ],
  ['too long', 'x'.repeat(262_145), '1:1 the file has 262145 characters; at most 262144 are read.'],
];

describe('a mistake is told with its place, what was found and what was expected', () => {
  it.each(MISSPELT)('%s', (_title, from, to, message) => {
    expect(issuesOf(broken(SOUND_SCENARIO, from, to)).map(lineOf)).toEqual([message]);
  });
  it.each(UNREADABLE)('%s', (_title, text, message) => {
    expect(issuesOf(text).map(lineOf)).toEqual([message]);
  });
  it('tells every mistake of a file at once, from top to bottom', () => {
    const text = broken(
      broken(broken(SOUND_SCENARIO, 'until: 300', 'until: -1'), 'title:', 'titel:'),
      'on: true',
      'on: 1',
    );
    expect(issuesOf(text).map(({ line, path }) => [line, path])).toEqual([
      [2, 'titel'],
      [11, 'actions[0].on'],
      [12, 'until'],
    ]);
  });
  it('tells of a key given twice and of reserved keys beside other mistakes', () => {
    const text = `${SOUND_SCENARIO}title: again\n__proto__: { admin: true }\nconstructor: 1\nseed: x\n`;
    expect(issuesOf(text).map(({ line, code }) => [line, code])).toEqual([
      [17, 'duplicate-key'],
      [18, 'reserved-key'],
      [19, 'reserved-key'],
      [20, 'wrong-type'],
    ]);
    expect(({} as { admin?: boolean }).admin).toBeUndefined();
  });
  it('stops at fifty', () => {
    const many = Array.from({ length: 80 }, () => '  - { at: x }').join('\n');
    expect(issuesOf(broken(SOUND_SCENARIO, 'load:\n', `load:\n${many}\n`))).toHaveLength(50);
  });
  it('tells the place in an action log by its entry', () => {
    const log =
      '[{t: 1, type: reset, pressed: true},\n {t: 1, type: reset},\n {t: -1, type: rest}]';
    const read = readYaml(log, 'log.json', actionLogSchema);
    expect(read.ok ? [] : read.issues.map(({ line, path, code }) => [line, path, code])).toEqual([
      [2, '[1].pressed', 'missing-key'],
      [3, '[2].type', 'unknown-choice'],
    ]);
  });
});

describe('what could stall a reader does not', () => {
  it.each([
    ['brackets without end', '['.repeat(200_000)],
    ['braces without end', '{a: '.repeat(60_000)],
    ['hyphens without end', '- '.repeat(120_000)],
    ['one key, tens of thousands of times', 'a:\n'.repeat(80_000)],
    [
      'aliases of aliases',
      Array.from({ length: 20 }, (_, i) => `a${i}: &a${i} [*a${i - 1}, *a${i - 1}]`).join('\n'),
    ],
  ])('%s', (_title, text) => {
    const found = issuesOf(text);
    expect(found.length).toBeGreaterThan(0);
    expect(found.length).toBeLessThanOrEqual(50);
  });
});
