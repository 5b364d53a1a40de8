import { unzipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import type { WordedItem } from '../../src/quiz/index.ts';
import { qtiFiles, qtiPackage } from '../../src/records/index.ts';
import { ITEM_SCHEMA, missingForSchemas, PACKAGE_SCHEMA, schemaProblems } from './qti-schemas.ts';
import { CHOICE, NUMBER, ORDER, paperOf, SAMPLES } from './samples.ts';

/** Ids, and texts, that a careless writer would break on. */
const AWKWARD: readonly WordedItem[] = [
  { ...CHOICE, id: 'written/äöü & "x" _5f_', asks: 'Is 1 < 2 & "so on"?' },
  { ...CHOICE, id: 'written/äöü & "x" _', tells: [], start: [], readings: [] },
  { ...ORDER, id: '9/9', caution: '\u0000<x>' },
  {
    ...NUMBER,
    id: 'n/1',
    key: 0.0000001234,
    from: 0.0000001,
    to: 0.00000013,
    unit: '',
  },
  { ...NUMBER, id: 'n/2', key: -40, from: -42, to: -38, unit: '°C' },
];
const PAPER = paperOf([...SAMPLES, ...AWKWARD]);

describe('a package of QTI 2.1', () => {
  it('is in order by the published schemas, file for file', (test) => {
    const missing = missingForSchemas();
    if (missing !== null) return test.skip(missing);
    const [manifest = '', ...others] = qtiFiles(PAPER).values();
    expect(others.length).toBe(PAPER.questions.length + 1);
    expect(schemaProblems([manifest], PACKAGE_SCHEMA)).toBe('');
    expect(schemaProblems(others, ITEM_SCHEMA)).toBe('');
    const [, item = ''] = others;
    const planted = [
      item.replace('<prompt>', '<prompted>'),
      item.replace(' cardinality="single"', ''),
      item.replace('identifier="option-1"', 'identifier="1 option"'),
    ];
    const found = schemaProblems(planted, ITEM_SCHEMA);
    for (const place of planted.keys()) expect(found).toContain(`${place}.xml`);
    expect(schemaProblems([manifest.replace('<file ', '<fill ')], PACKAGE_SCHEMA)).toContain(
      'fill',
    );
  });

  it('names every file in its manifest, and no name twice', () => {
    const files = qtiFiles(PAPER);
    const manifest = files.get('imsmanifest.xml') ?? '';
    const named = [...manifest.matchAll(/<file href="([^"]+)"/g)].map(([, path]) => path);
    expect([...named, 'imsmanifest.xml'].sort()).toEqual([...files.keys()].sort());
    const ids = [...manifest.matchAll(/ identifier="([^"]+)"/g)].map(([, id]) => id ?? '');
    expect(new Set(ids).size).toBe(ids.length);
    expect(ids.length).toBe(PAPER.questions.length + 2);
    for (const id of ids) expect(id).toMatch(/^[A-Za-z_][A-Za-z0-9_.-]*$/);
  });

  it('has the reasons of every option in what is shown after any of them', () => {
    const text = qtiFiles(paperOf([CHOICE])).get('items/item-cause_2f_dairy_2f_12.xml') ?? '';
    const shown = [...text.matchAll(/<modalFeedback.*?<\/modalFeedback>/g)].map(([one]) => one);
    expect(shown.length).toBe(3);
    for (const one of shown) {
      expect(one).toContain('The air switch is sound.');
      expect(one).toContain('It would leave the fan outlet as it was.');
    }
    expect(shown[0]).toContain('title="Right"');
    expect(shown[2]).toContain('title="Not right"');
    expect(shown[2]).toContain('The right answer: inlet louvre iced up');
  });

  it('takes numbers within the tolerance and no others', () => {
    for (const item of [...AWKWARD, NUMBER]) {
      if (item.answer !== 'number') continue;
      const [, text = ''] = [...qtiFiles(paperOf([item]))][2] ?? [];
      const key = Number(/<value>([-\d.]+)<\/value>/.exec(text)?.[1]);
      const [, below = '', above = ''] = /tolerance="([\d.]+) ([\d.]+)"/.exec(text) ?? [];
      // Six digits are written.
      const near = Math.abs(item.to - item.from) * 1e-3;
      expect(Math.abs(key - Number(below) - item.from)).toBeLessThan(near);
      expect(Math.abs(key + Number(above) - item.to)).toBeLessThan(near);
    }
  });

  it('is the same to the byte each time and in every time zone, and holds the files that were made', () => {
    const { data, name } = qtiPackage(PAPER);
    expect(name).toBe('flamewright-paper-417-qti.zip');
    const zone = process.env.TZ;
    for (const other of ['Asia/Kolkata', 'America/New_York', 'UTC']) {
      process.env.TZ = other;
      expect(qtiPackage(paperOf([...SAMPLES, ...AWKWARD])).data).toEqual(data);
    }
    process.env.TZ = zone;
    const held = unzipSync(data as Uint8Array);
    expect(Object.keys(held)).toEqual([...qtiFiles(PAPER).keys()]);
    expect(new TextDecoder().decode(held['paper.xml'])).toBe(qtiFiles(PAPER).get('paper.xml'));
  });
});
