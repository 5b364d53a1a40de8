import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  giftText,
  paperHtml,
  paperText,
  qtiFiles,
  sheetNodes,
  withoutForbidden,
  type XmlNode,
} from '../../src/records/index.ts';
import { CHOICE, NUMBER, ORDER, paperOf, SAMPLES, SPOT } from './samples.ts';

function textOf(node: XmlNode): string {
  return typeof node === 'string' ? node : node.children.map(textOf).join(' ');
}
const [asked, keyed] = sheetNodes(paperOf(SAMPLES)).map(textOf) as [string, string];

describe('a paper on a sheet', () => {
  it('asks everything before its key, and tells no reason there', () => {
    for (const item of SAMPLES) expect(asked).toContain(item.asks);
    for (const line of [
      ...CHOICE.start,
      ...CHOICE.readings.flatMap((one) => one.split(' – ')),
      SPOT.caution,
      ...ORDER.tells,
    ]) {
      expect(asked).toContain(line);
    }
    const reasons = [...CHOICE.options, ...ORDER.steps].flatMap(({ why }) => why);
    for (const secret of [...reasons, ...NUMBER.working, NUMBER.said]) {
      expect(asked).not.toContain(secret);
      expect(keyed).toContain(secret);
    }
  });

  it('names in its key the letters of what is right', () => {
    expect(keyed).toContain('Question 1: A');
    expect(keyed).toContain('Question 2: C');
    // Step B first, then C, then A.
    expect(keyed).toContain('Question 3: B, C, A');
    expect(keyed).toContain('Question 4: 12 dm³/h');
    expect(keyed).toContain('From 11.73 to 12.96 dm³/h counts as right.');
    expect(keyed).toMatch(/In short\s+A\s+C\s+B, C, A\s+12 dm³\/h\s+Question 1/);
  });

  it('writes both ends of what counts as right with as many decimals', () => {
    for (const [from, to, said] of [
      [1.29, 1.3212, 'From 1.290 to 1.321 '],
      [-42, -38.5, 'From −42.0 to −38.5 '],
      [1234.6, 1300, 'From 1235 to 1300 '],
    ] as const) {
      expect(paperText(paperOf([{ ...NUMBER, from, to }]))).toContain(said);
    }
  });

  it('shows what one check read in one row, and leaves room to work out a number', () => {
    const said = ['spark: loud', 'flame rumble: faint', 'open'];
    const readings = said.map((text, i) => `${i < 2 ? 'Listening' : 'Continuity'} – ${text}`);
    const html = paperHtml(paperOf([{ ...NUMBER, readings }]), '');
    const rows =
      html
        .match(/<tbody>.*<\/tbody>/)?.[0]
        .split('<tr>')
        .slice(1) ?? [];
    expect(rows).toHaveLength(2);
    for (const [i, text] of said.entries()) expect(rows[i < 2 ? 0 : 1]).toContain(text);
    expect(html.match(/class="paper-space"/g)).toHaveLength(1);
  });

  it('says in every format where the drawing is that a question asks about', () => {
    const paper = paperOf([SPOT]);
    const named = paper.words['drawing-named'];
    const [, , item = ''] = qtiFiles(paper).values();
    for (const text of [paperText(paper), paperHtml(paper, ''), item])
      expect(text).toContain(named);
    expect(giftText(paper)).toContain(named);
    expect(paperText(paperOf([CHOICE]))).not.toContain(named);
  });

  it('says as plain text what it says as a page, but for the heads of its columns', () => {
    const paper = paperOf(SAMPLES);
    const text = paperText(paper);
    const words = (said: string) => new Set(said.match(/[\p{L}\p{N}]+/gu));
    const columns = [paper.words['reading-of'], paper.words['reading-said']];
    const missing = [...words(`${asked} ${keyed}`)].filter(
      (word) => !words(text).has(word) && !columns.includes(word),
    );
    expect(missing).toEqual([]);
    expect(text.indexOf('Answer key')).toBeGreaterThan(text.indexOf(NUMBER.asks));
  });

  it('is a file in which no text of a question becomes markup', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', minLength: 1 }), (rest) => {
        const asks = `<script>alert(1)</script>${rest}`;
        const html = paperHtml(paperOf([{ ...CHOICE, asks }]), 'p { color: black }');
        expect(html).not.toContain('<script');
        expect(html).toContain('&lt;script&gt;');
        expect(html.match(/<p class="paper-asks">/g)?.length).toBe(2);
        const said = withoutForbidden(rest).replace(/[&<>]/g, '').slice(0, 5);
        expect(html).toContain(said);
      }),
      { numRuns: 100, seed: 70 },
    );
  });

  it('is in a file the same sheet, with its style unescaped and its number at the foot', () => {
    const css = '.paper > p::before { content: "$& > \'x\'" }';
    const html = paperHtml(paperOf(SAMPLES), css);
    expect(html).toContain(`<style>${css}</style>`);
    expect(html).toMatch(
      /^<!doctype html>\n<html lang="en" style="--paper-foot: &quot;Paper 417[^"]*; --paper-key-foot: &quot;Paper 417 · answer key/,
    );
    // Nothing but void elements may close itself in HTML.
    expect(html.match(/<(\w+)[^>]*\/>/g)?.every((one) => one.startsWith('<meta'))).toBe(true);
  });
});
