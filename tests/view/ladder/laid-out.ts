import { message } from '../../../src/i18n/index.ts';
import type { LadderWiring, SymbolSetName } from '../../../src/view/index.ts';
import { ladderLayout } from '../../../src/view/ladder/layout.ts';
import type { LadderLayout } from '../../../src/view/ladder/layout-types.ts';
import { elementName } from '../../../src/view/ladder/names.ts';
import { symbolsOf } from '../../../src/view/ladder/symbol-sets.ts';
import { wrapText } from '../../../src/view/schematic/wrap-text.ts';
import { textWidth } from '../../../src/view/text-width.ts';

export const FONT_PX = 16;
export const widthOf = (text: string): number => textWidth(text, FONT_PX, 400);

export function laidOut(
  widthPx: number,
  plan: LadderWiring,
  set: SymbolSetName = 'IEC',
): LadderLayout {
  const elements = new Map(plan.elements.map((element) => [element.name, element]));
  const symbolOf = symbolsOf(set);
  return ladderLayout(plan, {
    widthPx,
    fontPx: FONT_PX,
    reachOf: (name) => symbolOf(elements.get(name) ?? { kind: 'contact' }).reach,
    linesOf: (name, room) => wrapText(elementName({ name }, message), room, widthOf),
    widthOf,
  });
}
