import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import {
  practiceRecordHtml,
  RESULT_REMARKS,
  type ResultRemark,
} from '../../../src/records/class/index.ts';
import {
  conductWords,
  practicePages,
  practiceWords,
  remarkWords,
} from '../../../src/wording/class/index.ts';
import { BY_LUCK, RESULTS } from './class-results.ts';

const CSS = readFileSync(
  new URL('../../../src/app/styles/practice-record.css', import.meta.url),
  'utf8',
);
const pagesOf = (results: typeof RESULTS) =>
  practicePages(results, {
    classTitle: 'Tuesday evening',
    printed: '3 March 2026',
    whenOf: (iso) => `on ${iso.slice(0, 10)}`,
  });
const HTML = practiceRecordHtml(pagesOf(RESULTS), practiceWords(), CSS);

describe('the record of practice', () => {
  it('has a page for each learner, with all that he handed in and nothing of another', () => {
    const pages = HTML.split('class="practice-page"').slice(1);
    expect(pages).toHaveLength(5);
    expect(pages[0]).toContain('Ada');
    expect(pages[0]).toContain('A short quiz');
    expect(pages[0]).toContain('2 of 4 right');
    expect(pages[1]).not.toContain('Ada');
    expect(pages[1]).toContain('After the road works (attempt 2)');
  });

  it('says how it went in words: the way, the figures, what was unsafe, what was not believed', () => {
    const [line] = pagesOf([BY_LUCK])[0]?.lines ?? [];
    expect(line).toMatchObject({
      when: 'on 2026-03-02',
      outcome: '3 %',
      how: 'Found by trying parts, path 20 %',
      minutes: '120 min',
    });
    expect(line?.conduct[0]).toBe(
      'Unsafe: The ohms range of the meter was used between 11 and 12.',
    );
    expect(HTML).toContain('The page claimed 100 %; worked out again from the log it is 20 %');
    expect(HTML).toContain('log.12 is an act of the instructor');
  });

  it('names the rule where the words for a finding are gone', () => {
    const gone = { rule: 'SC-99', severity: 'careless', what: { code: 'conduct.gone' } } as const;
    expect(conductWords(gone)).toBe('Careless: SC-99');
  });

  it('holds whatever someone calls himself as text', () => {
    const nickname = '<script>alert("x")</script>';
    const html = practiceRecordHtml(pagesOf([{ ...BY_LUCK, nickname }]), practiceWords(), CSS);
    expect(html).not.toContain('<script');
    expect(html).toContain('&lt;script&gt;');
  });

  it('has a sentence for each remark, without an open place', () => {
    for (const code of RESULT_REMARKS) {
      const remark: ResultRemark = { code, where: 'log.3', detail: '7', claimed: 1, found: 0.25 };
      expect(remarkWords(remark), code).not.toMatch(/[{}]|^[a-z -]+$/);
    }
  });
});
