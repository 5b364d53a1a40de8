const MOST_S = 100_000;

/** `83` or `1:23`, s; null where it is neither. */
export function momentOf(text: string): number | null {
  const [, minutes = '0', seconds = ''] =
    /^\s*(?:(\d{1,4}):)?(\d{1,5}(?:\.\d)?)\s*$/.exec(text) ?? [];
  if (seconds === '') return null;
  const atS = Number(minutes) * 60 + Number(seconds);
  return atS <= MOST_S ? atS : null;
}
