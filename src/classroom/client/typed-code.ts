import { CODE_LETTERS } from '../protocol/index.ts';

export interface TypedCode {
  /** Its letters, as far as they may stand in a code. */
  readonly code: string;
  /** Letters and digits that stand in no code, each once, in the order typed. */
  readonly wrong: readonly string[];
}

/** What someone typed as a code: in any case, with spaces and strokes as one likes. */
export function readTypedCode(typed: string): TypedCode {
  const signs = [...typed.toUpperCase()].filter((sign) => !/[\s\-–—.·]/.test(sign));
  return {
    code: signs.filter((sign) => CODE_LETTERS.includes(sign)).join(''),
    wrong: [...new Set(signs.filter((sign) => !CODE_LETTERS.includes(sign)))],
  };
}
