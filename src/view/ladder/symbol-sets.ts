import { type DrawnElement, iecSymbols, type LadderSymbol } from './symbols.ts';
import { northAmericanSymbols } from './symbols-na.ts';
import type { SymbolSetName } from './types.ts';

export function symbolsOf(set: SymbolSetName): (element: DrawnElement) => LadderSymbol {
  return set === 'NA' ? (element) => northAmericanSymbols(element, iecSymbols) : iecSymbols;
}
