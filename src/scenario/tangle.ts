import { CST, Lexer } from 'yaml';
import { MAX_DEPTH, MAX_NODES } from './bounds.ts';

export interface Tangle {
  readonly code: 'too-deep' | 'too-many-nodes';
  readonly offset: number;
}

/** A key and its value come with a mark each, and an empty one with the mark alone. */
const MOST_MARKS = 3 * MAX_NODES;

/**
 * Nesting or sheer number that the parser would spend seconds on before anyone could count
 * nodes. Only what is surely beyond the bounds is found here; the nodes are counted later.
 */
export function tangleIn(text: string): Tangle | null {
  let offset = 0;
  let brackets = 0;
  let hyphens = 0;
  let marks = 0;
  let isScalar = false;
  for (const token of new Lexer().lex(text)) {
    if (isScalar) {
      isScalar = false;
      offset += token.length;
      continue;
    }
    switch (CST.tokenType(token)) {
      case 'scalar':
        isScalar = true;
        marks += 1;
        break;
      case 'flow-seq-start':
      case 'flow-map-start':
        brackets += 1;
        marks += 1;
        break;
      case 'flow-seq-end':
      case 'flow-map-end':
        brackets = Math.max(0, brackets - 1);
        break;
      case 'seq-item-ind':
      case 'explicit-key-ind':
        hyphens += 1;
        marks += 1;
        break;
      case 'map-value-ind':
      case 'comma':
        marks += 1;
        break;
      case 'newline':
        hyphens = 0;
        break;
    }
    if (brackets > MAX_DEPTH || hyphens > MAX_DEPTH) return { code: 'too-deep', offset };
    if (marks > MOST_MARKS) return { code: 'too-many-nodes', offset };
    if (!isMarker(token)) offset += token.length;
  }
  return null;
}

/** The lexer says "a scalar follows", "a document begins" and the like in characters of its own. */
function isMarker(token: string): boolean {
  return token === CST.SCALAR || token === CST.DOCUMENT || token === CST.FLOW_END;
}
