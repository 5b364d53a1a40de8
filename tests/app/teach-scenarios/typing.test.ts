import { describe, expect, it } from 'vitest';
import {
  freeSlot,
  listOwn,
  nameOf,
  type OwnFile,
  readOwn,
  writeOwn,
} from '../../../src/app/teach-scenarios/own-files.ts';
import { saveOwn } from '../../../src/app/teach-scenarios/save-own.ts';
import {
  endOfChange,
  indent,
  newLine,
  offsetAt,
  outdent,
} from '../../../src/app/teach-scenarios/text-edits.ts';
import { historyOf, stepHistory } from '../../../src/app/teach-scenarios/use-history.ts';
import type { Shelf } from '../../../src/app/work/shelf.ts';

function shelfOf(texts: Readonly<Record<string, string>> = {}): Shelf {
  const kept = new Map(Object.entries(texts));
  return {
    keys: () => [...kept.keys()],
    get: (key) => kept.get(key) ?? null,
    set: (key, text) => void kept.set(key, text),
    remove: (key) => void kept.delete(key),
  };
}
const FILE: OwnFile = {
  v: 1,
  kind: 'start',
  slot: 'one',
  text: 'id: [',
  typedISO: '2026-01-02T00:00:00.000Z',
  savedText: null,
  savedISO: null,
  serverVersion: 3,
};

/** A bar stands for the cursor, two for a selection. */
function state(marked: string) {
  const from = marked.indexOf('|');
  const last = marked.lastIndexOf('|');
  return { text: marked.replaceAll('|', ''), from, to: last === from ? from : last - 1 };
}
function marked({ text, from, to }: ReturnType<typeof state>): string {
  const end = to === from ? '' : '|';
  return `${text.slice(0, from)}|${text.slice(from, to)}${end}${text.slice(to)}`;
}

describe('keys of the text', () => {
  it.each([
    ['a: |', 'a:  |'],
    ['a:  |', 'a:    |'],
    ['|a: 1', '  |a: 1'],
    ['|a:\n  b: 1|\nc: 2', '  |a:\n    b: 1|\nc: 2'],
  ])('Tab makes %j into %j', (before, after) => {
    expect(marked(indent(state(before)))).toBe(after);
  });
  it.each([
    ['    b|: 1', '  b|: 1'],
    ['b|: 1', 'b|: 1'],
    ['|  a:\n    b: 1|\nc: 2', '|a:\n  b: 1|\nc: 2'],
  ])('Tab with Shift makes %j into %j', (before, after) => {
    expect(marked(outdent(state(before)))).toBe(after);
  });
  it.each([
    ['  a: 1|', '  a: 1\n  |'],
    ['  card:|', '  card:\n    |'],
    ['  - step: purge|', '  - step: purge\n    |'],
    ['a: >-|', 'a: >-\n  |'],
    ['|a', '\n|a'],
  ])('Enter makes %j into %j', (before, after) => {
    expect(marked(newLine(state(before)))).toBe(after);
  });
  it('finds a place by line and column, and the end of a change', () => {
    expect(offsetAt('ab\ncd\n', 2, 2)).toBe(4);
    expect(offsetAt('ab', 9, 1)).toBe(2);
    expect(endOfChange('one two', 'one new two')).toBe(7);
  });
});

describe('one history of the text', () => {
  const change = (text: string, kind: string, atMs: number) =>
    ({ do: 'change', text, kind, atMs }) as const;
  it('takes back what was typed together at once, and what the form did by itself', () => {
    let history = historyOf('a');
    for (const step of [change('ab', 'typing', 0), change('abc', 'typing', 300)]) {
      history = stepHistory(history, step);
    }
    history = stepHistory(history, change('abX', 'field title', 400));
    history = stepHistory(history, change('abXY', 'typing', 5000));
    const texts: string[] = [];
    while (history.past.length > 0) {
      history = stepHistory(history, { do: 'undo' });
      texts.push(history.text);
    }
    expect(texts).toEqual(['abX', 'abc', 'a']);
    for (const text of ['abc', 'abX', 'abXY']) {
      history = stepHistory(history, { do: 'redo' });
      expect(history.text).toBe(text);
    }
    expect(stepHistory(history, { do: 'redo' })).toBe(history);
  });
  it('forgets what was taken back once something else is typed', () => {
    let history = stepHistory(historyOf('a'), change('b', '', 0));
    history = stepHistory(history, { do: 'undo' });
    history = stepHistory(history, change('c', '', 1));
    expect(history.future).toEqual([]);
    expect(stepHistory(history, { do: 'undo' }).text).toBe('a');
  });
});

describe('files of this device', () => {
  it('are kept as typed, in order or not, the latest first', () => {
    const shelf = shelfOf();
    expect(writeOwn(shelf, FILE)).toBeNull();
    writeOwn(shelf, { ...FILE, kind: 'job', typedISO: '2026-02-02T00:00:00.000Z' });
    expect(listOwn(shelf).map(({ kind }) => kind)).toEqual(['job', 'start']);
    expect(readOwn(shelf, 'start', 'one')).toEqual(FILE);
  });
  it('that cannot be read are neither shown nor lost', () => {
    const shelf = shelfOf({ 'flamewright.scenario.start.old': '{"v":9,"text":"x"}' });
    expect(listOwn(shelf)).toEqual([]);
    expect(freeSlot(shelf, 'start', 'old')).toBe('old-2');
  });
  it('say why they cannot be kept', () => {
    const refusing = (name: string): Shelf => ({
      ...shelfOf(),
      set: () => {
        throw Object.assign(new Error('no'), { name });
      },
    });
    expect(writeOwn(refusing('QuotaExceededError'), FILE)).toBe('no room');
    expect(writeOwn(refusing('SecurityError'), FILE)).toBe('storage refused');
  });
  it('are saved under the name that they give themselves, unless another has it', () => {
    const shelf = shelfOf();
    writeOwn(shelf, FILE);
    const renamed = saveOwn(shelf, FILE, { id: 'two' }).file;
    expect(renamed).toMatchObject({ slot: 'two', savedText: FILE.text, serverVersion: 0 });
    expect(readOwn(shelf, 'start', 'one')).toBeNull();
    for (const id of ['dirty-lens', 'Not a name', 7]) {
      expect(saveOwn(shelf, FILE, { id }).file).toMatchObject({ slot: 'one', serverVersion: 3 });
    }
    expect(saveOwn(shelf, FILE, { id: 'dirty-lens' }).says).toContain('dirty-lens');
  });
  it('have a name made of their title', () => {
    expect(nameOf('Ein großer Kessel: Nr. 7!')).toBe('ein-groer-kessel-nr-7');
    expect(nameOf('2 valves')).toBe('valves');
    expect(nameOf('Ψ')).toBe('');
  });
});
