/** What a key does on the board. Pure. */

export interface BoardKey {
  readonly does: 'move' | 'range' | 'toggle' | 'open' | 'all' | 'none';
  /** The place it is about. */
  readonly to: number;
}

interface Key {
  readonly key: string;
  readonly shiftKey: boolean;
  readonly ctrlKey: boolean;
  readonly metaKey: boolean;
}

/**
 * @param at place of the option that has the keys; −1: none yet
 * @returns null where the key is none of the board's
 */
export function keyOnBoard(
  { key, shiftKey, ctrlKey, metaKey }: Key,
  at: number,
  count: number,
  columns: number,
): BoardKey | null {
  if ((ctrlKey || metaKey) && key.toLowerCase() === 'a') return { does: 'all', to: at };
  if (ctrlKey || metaKey) return null;
  if (key === 'Escape') return { does: 'none', to: at };
  if (key === ' ') return { does: 'toggle', to: at };
  if (key === 'Enter') return { does: 'open', to: at };
  const step = stepOf(key, at, count, columns);
  if (step === null || count === 0) return null;
  const to = Math.max(0, Math.min(count - 1, step));
  return { does: shiftKey ? 'range' : 'move', to };
}

function stepOf(key: string, at: number, count: number, columns: number): number | null {
  switch (key) {
    case 'ArrowRight':
      return at + 1;
    case 'ArrowLeft':
      return at - 1;
    case 'ArrowDown':
      // Below the last full row there is the last one.
      return at < 0 ? 0 : at + columns;
    case 'ArrowUp':
      return at - columns < 0 ? at : at - columns;
    case 'Home':
      return 0;
    case 'End':
      return count - 1;
    default:
      return null;
  }
}
