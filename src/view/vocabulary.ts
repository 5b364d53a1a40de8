/**
 * The words behind the packed logic channels, in bit order, as the engine lists them.
 * Handed in by the page, because a view may not import the machine.
 */
export interface Vocabulary {
  readonly steps: readonly string[];
  readonly commands: readonly string[];
  readonly inputs: readonly string[];
  readonly targets: readonly string[];
}

/** The bit of a name in a packed word; 0 (never set) for a name that is not there. */
export function bitOf(names: readonly string[], name: string): number {
  const place = names.indexOf(name);
  return place < 0 ? 0 : 1 << place;
}

export function isSet(word: number, bit: number): boolean {
  return bit !== 0 && (word & bit) !== 0;
}

/** `upstream-valve` as the machine's terminals spell it: `upstreamValve`. */
export function terminalOf(itemId: string): string {
  return itemId.replace(/-([a-z])/g, (_all, letter: string) => letter.toUpperCase());
}
