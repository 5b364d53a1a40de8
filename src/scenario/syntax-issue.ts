import { type Document, isCollection, isScalar, Scalar, visit, type YAMLError } from 'yaml';
import { type Phrase, phrase } from './phrase.ts';

const SYNTAX_PHRASES: Readonly<Record<string, string>> = {
  BAD_DQ_ESCAPE: 'syntax.escape',
  BAD_INDENT: 'syntax.indent',
  BAD_SCALAR_START: 'syntax.reserved-start',
  BLOCK_AS_IMPLICIT_KEY: 'syntax.two-colons',
  BLOCK_IN_FLOW: 'syntax.block-in-flow',
  MISSING_CHAR: 'syntax.missing-mark',
  MULTILINE_IMPLICIT_KEY: 'syntax.missing-colon',
  MULTIPLE_DOCS: 'syntax.two-documents',
  RESOURCE_EXHAUSTION: 'syntax.too-tangled',
  TAB_AS_INDENT: 'syntax.tab',
  UNEXPECTED_TOKEN: 'syntax.unexpected',
};

/** The parser's complaint in our words: its own texts are for programmers. */
export function syntaxPhrase(error: YAMLError): Phrase {
  const code = SYNTAX_PHRASES[error.code];
  if (code === 'syntax.missing-mark') {
    if (error.message.includes('quote')) return phrase('syntax.missing-quote');
    if (/with a \]|end with/.test(error.message)) {
      return phrase('syntax.missing-bracket', { mark: error.message.includes(']') ? ']' : '}' });
    }
    if (error.message.includes('map values')) return phrase('syntax.missing-colon');
  }
  if (error.code === 'BAD_INDENT' && /end with a [\]}]/.test(error.message)) {
    return phrase('syntax.missing-bracket', { mark: error.message.includes(']') ? ']' : '}' });
  }
  return phrase(code ?? 'syntax.unexpected');
}

/** An unclosed quote or bracket is noticed at the end of the file; its beginning is what must be mended. */
export function startOfMistake(parsed: Document.Parsed, error: YAMLError, text: string): number {
  const end = error.pos[0];
  let start = Math.min(end, text.length);
  if (error.code !== 'MISSING_CHAR' && error.code !== 'BAD_INDENT') return start;
  const wanted = /quote/.test(error.message)
    ? 'quote'
    : /end with/.test(error.message)
      ? 'flow'
      : '';
  if (wanted === '') return start;
  visit(parsed, {
    Node(_key, node) {
      const open =
        wanted === 'flow'
          ? isCollection(node) && node.flow === true
          : isScalar(node) &&
            (node.type === Scalar.QUOTE_DOUBLE || node.type === Scalar.QUOTE_SINGLE);
      const range = node.range;
      if (open && range && range[0] <= end && range[1] >= Math.min(end, text.length)) {
        start = range[0];
      }
    },
  });
  return start;
}
