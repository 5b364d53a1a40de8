import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sayMessage } from '../../src/i18n/index.ts';
import { phraseOfIssue } from '../../src/scenario/issue.ts';
import { buildLibrary } from '../../src/scenario/library.ts';
import { pathsOf, replaced } from './change-data.ts';
import { SMALL_CATALOGUE, SOUND_SCENARIO, smallLibrary, soundPlant } from './small-files.ts';

/** What is likely to slip through: right in kind, wrong in meaning. */
const LIKELY = [0, -1, 1e6, '', 'supply', 'furnace', 'upstream-valve', true, null, [], {}, [[]]];

describe('a plant with anything in the place of anything', () => {
  it('is a plant or is told with sentences, and never throws', () => {
    const plant = JSON.stringify(soundPlant());
    const paths = pathsOf(JSON.parse(plant));
    const change = fc.tuple(
      fc.constantFrom(...paths),
      fc.oneof(fc.constantFrom(...LIKELY), fc.jsonValue({ maxDepth: 2 })),
    );
    fc.assert(
      fc.property(fc.array(change, { minLength: 1, maxLength: 3 }), (changes) => {
        let data = JSON.parse(plant);
        for (const [path, value] of changes) data = replaced(data, path, value);
        const built = buildLibrary(smallLibrary(SOUND_SCENARIO, data), { faults: SMALL_CATALOGUE });
        if (built.ok) return;
        expect(built.issues.length).toBeGreaterThan(0);
        for (const issue of built.issues) {
          expect(issue.line).toBeGreaterThan(0);
          expect(sayMessage(phraseOfIssue(issue))).not.toMatch(/\{\w+\}|undefined|\[object/);
        }
      }),
      { seed: 815, numRuns: 150 },
    );
  });
});
