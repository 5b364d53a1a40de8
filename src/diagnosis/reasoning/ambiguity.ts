import { type Particles, spansOf } from './particles.ts';

/** Share of the plants of a cause that must have a double with the other cause. */
const ALIKE_SHARE = 0.5;

/**
 * Causes that no permitted check tells apart, as groups of places in `causes`; each cause is in one
 * group. Two causes belong together when half of the plants of each read the same everywhere as some
 * plant of the other.
 *
 * @param permitted whether a key may be looked at
 */
export function ambiguityGroups(
  particles: Particles,
  permitted: (key: number) => boolean = () => true,
): readonly (readonly number[])[] {
  const { causes } = particles;
  const rows = rowsOf(particles, permitted);
  const spans = spansOf(particles);
  const ofCause = causes.map((_, c) => rows.slice(spans[c], spans[c + 1]));
  const kinds = ofCause.map((own) => new Set(own));
  const groupOf = causes.map((_, cause) => cause);
  const doubled = (a: number, b: number) => {
    const own = ofCause[a] ?? [];
    const alike = own.filter((row) => kinds[b]?.has(row));
    return own.length > 0 && alike.length / own.length >= ALIKE_SHARE;
  };
  for (let a = 0; a < causes.length; a++) {
    for (let b = a + 1; b < causes.length; b++) {
      if (groupOf[a] === groupOf[b] || !doubled(a, b) || !doubled(b, a)) continue;
      const gone = groupOf[b];
      groupOf.forEach((group, c) => {
        if (group === gone) groupOf[c] = groupOf[a] as number;
      });
    }
  }
  const groups = new Map<number, number[]>();
  groupOf.forEach((group, cause) => {
    groups.set(group, [...(groups.get(group) ?? []), cause]);
  });
  return [...groups.values()];
}

/** All bins of each particle, as a text. */
function rowsOf(
  { keys, causeOf }: Particles,
  permitted: (key: number) => boolean,
): readonly string[] {
  const columns = keys.flatMap(({ column }, key) => (permitted(key) ? [column] : []));
  return Array.from(causeOf, (_, p) =>
    columns.map((column) => String.fromCharCode(column[p] as number)).join(''),
  );
}
