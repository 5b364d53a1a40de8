import { filled, type Paper, titleOf } from '../paper/paper.ts';
import { withoutForbidden } from '../plain-text.ts';
import { element, nodeText } from '../xml/xml.ts';
import { sheetNodes } from './sheet-nodes.ts';

/**
 * A paper as one file that any browser shows and prints.
 *
 * @param css the style of the sheet; it may not hold `</style`
 */
export function paperHtml(paper: Paper, css: string): string {
  const style = Object.entries(footProperties(paper)).map(([name, said]) => `${name}: ${said}`);
  const root = element('html', { lang: 'en', style: style.join('; ') }, [
    element('head', {}, [
      element('meta', { charset: 'utf-8' }),
      element('meta', { name: 'viewport', content: 'width=device-width' }),
      element('title', {}, [titleOf(paper)]),
      element('style', {}, [STYLE_GOES_HERE]),
    ]),
    element('body', {}, [element('main', { class: 'paper-sheet' }, sheetNodes(paper))]),
  ]);
  // Style is not text: nothing in it is escaped.
  return `<!doctype html>\n${nodeText(root).replace(STYLE_GOES_HERE, () => css)}\n`;
}

/** What the foot of each printed page says, as the properties that the style sheet takes. */
export function footProperties({ number, words }: Paper): Readonly<Record<string, string>> {
  return {
    '--paper-foot': cssText(filled(words.foot, { number })),
    '--paper-key-foot': cssText(filled(words['key-foot'], { number })),
  };
}

function cssText(said: string): string {
  return `"${withoutForbidden(said).replace(/["\\\n\r]/g, ' ')}"`;
}

const STYLE_GOES_HERE = 'style-goes-here';
