/** A learner's record of practice, in words: what was done, when, how it went. One page a learner. */
import { element, nodeText, type XmlElement } from '../xml/xml.ts';

export const PRACTICE_PHRASES = [
  'title',
  /** Stands under the title: what this paper is, and what it is not. */
  'about',
  'learner',
  'seat',
  'class',
  'printed',
  'exercise',
  'when',
  'outcome',
  'how',
  'minutes',
  'conduct',
  'remarks',
  'none',
  'instructor',
  'signature',
  'date',
  'caution',
] as const;
export type PracticeWords = Readonly<Record<(typeof PRACTICE_PHRASES)[number], string>>;

/** One attempt, in words. */
export interface PracticeLine {
  readonly exercise: string;
  readonly when: string;
  readonly outcome: string;
  /** How the cause was found, or how many were right. */
  readonly how: string;
  readonly minutes: string;
  /** A sentence each. */
  readonly conduct: readonly string[];
  readonly remarks: readonly string[];
}

export interface PracticePage {
  readonly learner: string;
  readonly seat: number;
  readonly classTitle: string;
  readonly printed: string;
  readonly lines: readonly PracticeLine[];
}

/**
 * The pages as one file that any browser shows and prints.
 *
 * @param css the style of the pages; it may not hold `</style`
 */
export function practiceRecordHtml(
  pages: readonly PracticePage[],
  words: PracticeWords,
  css: string,
): string {
  const root = element('html', { lang: 'en' }, [
    element('head', {}, [
      element('meta', { charset: 'utf-8' }),
      element('meta', { name: 'viewport', content: 'width=device-width' }),
      element('title', {}, [words.title]),
      element('style', {}, [STYLE_GOES_HERE]),
    ]),
    element('body', {}, [
      element('main', { class: 'practice-record' }, practiceNodes(pages, words)),
    ]),
  ]);
  // Style is not text: nothing in it is escaped.
  return `<!doctype html>\n${nodeText(root).replace(STYLE_GOES_HERE, () => css)}\n`;
}

/** Elements of HTML with classes `practice-…`, a section a page; the same in a page as in a file. */
export function practiceNodes(
  pages: readonly PracticePage[],
  words: PracticeWords,
): readonly XmlElement[] {
  return pages.map((page) => pageNode(page, words));
}

function pageNode(page: PracticePage, words: PracticeWords): XmlElement {
  const { learner, seat, classTitle, printed, lines } = page;
  return element('section', { class: 'practice-page' }, [
    element('header', { class: 'practice-head' }, [
      element('h2', {}, [words.title]),
      element('p', { class: 'practice-about' }, [words.about]),
      element('dl', { class: 'practice-who' }, [
        ...pair(words.learner, learner),
        ...pair(words.seat, String(seat)),
        ...pair(words.class, classTitle),
        ...pair(words.printed, printed),
      ]),
    ]),
    lines.length === 0 ? element('p', {}, [words.none]) : tableOf(lines, words),
    element('p', { class: 'practice-caution' }, [words.caution]),
    element(
      'p',
      { class: 'practice-sign' },
      [words.instructor, words.signature, words.date].map((label) =>
        element('span', { class: 'practice-field' }, [label]),
      ),
    ),
  ]);
}

function pair(label: string, said: string): XmlElement[] {
  return [element('dt', {}, [label]), element('dd', {}, [said === '' ? NOTHING : said])];
}

function tableOf(lines: readonly PracticeLine[], words: PracticeWords): XmlElement {
  const heads = [words.exercise, words.when, words.outcome, words.how, words.minutes];
  return element('table', { class: 'practice-table' }, [
    element('thead', {}, [
      element(
        'tr',
        {},
        heads.map((head) => element('th', { scope: 'col' }, [head])),
      ),
    ]),
    element(
      'tbody',
      {},
      lines.flatMap((line) => rowsOf(line, words, heads.length)),
    ),
  ]);
}

function rowsOf(line: PracticeLine, words: PracticeWords, columns: number): XmlElement[] {
  const cells = [line.when, line.outcome, line.how, line.minutes];
  return [
    element('tr', {}, [
      element('th', { scope: 'row' }, [line.exercise]),
      ...cells.map((said) => element('td', {}, [said])),
    ]),
    ...noted(words.conduct, line.conduct, columns),
    ...noted(words.remarks, line.remarks, columns),
  ];
}

/** What needs more room than a column goes below its line. */
function noted(label: string, said: readonly string[], columns: number): XmlElement[] {
  if (said.length === 0) return [];
  return [
    element('tr', { class: 'practice-noted' }, [
      element('td', { colspan: String(columns) }, [
        element('strong', {}, [label]),
        element(
          'ul',
          {},
          said.map((sentence) => element('li', {}, [sentence])),
        ),
      ]),
    ]),
  ];
}

const STYLE_GOES_HERE = 'style-goes-here';
/** Something to hold the place open. */
const NOTHING = '\u00a0';
