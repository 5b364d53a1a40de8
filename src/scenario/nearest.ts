/**
 * The known word that a misspelt one was probably meant to be.
 *
 * Distance: optimal string alignment (insert, delete, replace, swap of neighbours),
 * case and the marks between words not counted. A word is offered when it is within a
 * third of its length, so a short word needs to be nearly right.
 * Source: G. Navarro, A guided tour to approximate string matching, 2001.
 */
export function nearest(word: string, known: readonly string[]): string | null {
  return nearestFew(word, known, 1)[0] ?? null;
}

export function nearestFew(word: string, known: readonly string[], count: number): string[] {
  const wanted = plain(word);
  if (wanted === '' || wanted.length > LONGEST) return [];
  return known
    .map((candidate) => ({ candidate, distance: alignmentDistance(wanted, plain(candidate)) }))
    .filter(({ candidate, distance }) => distance <= reach(wanted, plain(candidate)))
    .sort((a, b) => a.distance - b.distance || (a.candidate < b.candidate ? -1 : 1))
    .slice(0, count)
    .map(({ candidate }) => candidate);
}

const LONGEST = 80;

function reach(wanted: string, candidate: string): number {
  return Math.max(1, Math.floor(Math.max(wanted.length, candidate.length) / 3));
}

function plain(word: string): string {
  return word
    .toLowerCase()
    .replace(/[\s_-]+/g, ' ')
    .trim();
}

export function alignmentDistance(a: string, b: string): number {
  let beforeLast: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1];
      let best = Math.min(
        (last[j] ?? 0) + 1,
        (row[j - 1] ?? 0) + 1,
        (last[j - 1] ?? 0) + (same ? 0 : 1),
      );
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) {
        best = Math.min(best, (beforeLast[j - 2] ?? 0) + 1);
      }
      row.push(best);
    }
    beforeLast = last;
    last = row;
  }
  return last[b.length] ?? 0;
}
