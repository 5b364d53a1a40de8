import type { Evidence } from './evidence.ts';
import type { Told } from './reasoning.ts';
import type { View } from './view-of-knowing.ts';

const MOST_SIGNS = 8;

/** What was not as on a sound plant, the least expected first. */
export function signsTold(before: View, added: readonly Evidence[]): readonly Told[] {
  const { atlas } = before.tables;
  const signs = added.flatMap(({ observations, told, signs }) =>
    told.flatMap((one, i) => {
      const observation = observations[i];
      if (!signs[i] || observation === undefined) return [];
      const column = atlas.keys[observation.key]?.column ?? [];
      let expected = 0;
      for (let p = 0; p < column.length; p++) {
        if (column[p] === observation.bin) expected += before.shares[p] as number;
      }
      return [{ one, expected }];
    }),
  );
  return signs
    .sort((a, b) => a.expected - b.expected)
    .slice(0, MOST_SIGNS)
    .map(({ one }) => one);
}
