import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  paperHtml,
  paperText,
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
