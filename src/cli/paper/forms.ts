import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { giftText, type Paper, paperHtml, paperText, qtiPackage } from '../../records/index.ts';

export const PAPER_FORMS = ['text', 'html', 'gift', 'qti'] as const;
export type PaperForm = (typeof PAPER_FORMS)[number];

/** The page and a file show the same sheet. */
const STYLE = ['src', 'app', 'styles', 'paper-sheet.css'];

export function isForm(text: string): text is PaperForm {
  return (PAPER_FORMS as readonly string[]).includes(text);
}

export function paperInForm(paper: Paper, form: PaperForm, root: string): string | Uint8Array {
  switch (form) {
    case 'text':
      return paperText(paper);
    case 'html':
      return paperHtml(paper, readFileSync(join(root, ...STYLE), 'utf8'));
    case 'gift':
      return giftText(paper);
    case 'qti':
      return qtiPackage(paper).data;
  }
}
