import { readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { createRun } from '../../src/engine/index.ts';
import { FAULTS } from '../../src/faults/index.ts';
import { sayMessage } from '../../src/i18n/index.ts';
import { buildLibrary, checkExpectation } from '../../src/scenario/index.ts';
import { library, shippedSetup } from '../support/library.ts';

describe('the shipped scenarios', () => {
  it.each([
    ['starts', library.scenarios],
    ['jobs', library.jobs],
    ['drills', library.drills],
    ['lessons', library.lessons],
  ] as const)('are called as their files are, in %s', (folder, all) => {
    const files = readdirSync(new URL(`../../scenarios/${folder}`, import.meta.url));
    expect(all.map(({ id }) => `${id}.yaml`).sort()).toEqual(files.sort());
  });
  it('have names of their own, so that each can be run by its name', () => {
    const { scenarios, jobs, drills, lessons } = library;
    const ids = [...scenarios, ...jobs, ...drills, ...lessons].map(({ id }) => id);
    expect(ids).toEqual([...new Set(ids)]);
  });
  it('are the same when what was read is written and read again', () => {
    const write = (kind: string, all: readonly { readonly id: string }[]) =>
      all.map((one) => ({ path: `${kind}/${one.id}.json`, text: JSON.stringify(one) }));
    const again = buildLibrary([
      ...write('plants', library.plants),
      ...write('profiles', library.profiles),
      ...write('starts', library.scenarios),
      ...write('jobs', library.jobs),
      ...write('drills', library.drills),
      ...write('lessons', library.lessons),
      ...write('quiz', library.quizzes),
    ]);
    expect(again).toEqual({ ok: true, value: library });
  });
  it('are at least twelve, with faults of most families', () => {
    expect(library.scenarios.length).toBeGreaterThanOrEqual(12);
    const families = new Set(
      library.scenarios.flatMap(({ faults }) =>
        faults.map((line) => FAULTS.find(({ id }) => id === line.fault)?.family),
      ),
    );
    expect(families.size).toBeGreaterThanOrEqual(7);
  });
  it.each(
    library.scenarios.map(({ id, expect: expected, until }) => [id, expected, until] as const),
  )('%s does what it promises', (id, expected, until) => {
    const run = createRun(shippedSetup(id), { keep: 'hash only' });
    run.advanceTo(until);
    expect(checkExpectation(run.events(), expected).map(sayMessage)).toEqual([]);
  });
});
