/** A mark that is pressed needs this much room, px. */
export const MARK_PX = 44;

/**
 * Left edges for marks that want to stand centred at `wantedPx` (rising), moved apart so that none
 * covers another and all stay within the width, as far as there is room.
 */
export function spreadMarks(wantedPx: readonly number[], widthPx: number): readonly number[] {
  const lefts = wantedPx.map((x) => x - MARK_PX / 2);
  for (let i = 0; i < lefts.length; i += 1) {
    const least = i === 0 ? 0 : (lefts[i - 1] ?? 0) + MARK_PX;
    lefts[i] = Math.max(lefts[i] ?? 0, least);
  }
  for (let i = lefts.length - 1; i >= 0; i -= 1) {
    const most = (i === lefts.length - 1 ? widthPx : (lefts[i + 1] ?? widthPx)) - MARK_PX;
    lefts[i] = Math.min(lefts[i] ?? 0, most);
  }
  return lefts;
}
