import { describe, expect, it } from 'vitest';
import { createRun, type RunSetup, type TimedAction } from '../../../src/engine/index.ts';
import { type ChoiceItem, lintItem, whatFollowsHere } from '../../../src/quiz/index.ts';
import { namesOfPlant, wordItem } from '../../../src/wording/index.ts';
import { shippedSetup as start } from '../../support/library.ts';

const LONG_MS = 60_000;

/** What the run does next by itself, as a step or as the cause of a lockout. */
function next(setup: RunSetup, log: readonly TimedAction[], atS: number): string {
  const run = createRun({ ...setup, actions: [...log] });
  run.advanceTo(atS);
  const { sinceS } = run.status();
  while (run.status().sinceS === sinceS) run.advanceTo(run.timeS() + 0.1);
  return run.status().lockout ?? run.status().step;
}

function saidBy(item: ChoiceItem, place: number): string {
  return JSON.stringify(item.options[place]?.says);
}

describe('what follows, asked where a run stands', () => {
  it.each(['healthy-start', 'dead-transformer', 'laundry-healthy-start', 'school-no-spark'])(
    'has what the run itself does as its answer, and something else beside it, all through %s',
    (id) => {
      const setup = start(id);
      let asked = 0;
      for (let atS = 62; atS < 240; atS += 29) {
        const here = whatFollowsHere(setup, setup.actions, atS, asked % 3);
        if (!here.ok) continue;
        asked += 1;
        const { item, followsS } = here;
        expect(followsS).toBeGreaterThan(atS - 0.1);
        const right = next(setup, setup.actions, atS);
        expect(saidBy(item, item.key)).toContain(`"${right}"`);
        const others = item.options.filter((_, place) => place !== item.key);
        expect(others.length).toBeGreaterThan(0);
        for (const [place] of others.entries()) {
          expect(saidBy(item, place < item.key ? place : place + 1)).not.toContain(`"${right}"`);
        }
        expect(item.key).toBe(Math.min((asked - 1) % 3, item.options.length - 1));
      }
      expect(asked).toBeGreaterThan(1);
    },
    LONG_MS,
  );

  it('answers for what was done by hand until then', () => {
    const setup = start('healthy-start');
    const atS = 80;
    const log: TimedAction[] = [
      ...setup.actions.filter(({ t }) => t <= atS),
      { t: atS - 1, type: 'emergency-stop', pressed: true },
    ];
    const free = whatFollowsHere(setup, setup.actions, atS, 0);
    const stopped = whatFollowsHere(setup, log, atS, 0);
    expect(free.ok && saidBy(free.item, 0)).not.toBe(stopped.ok && saidBy(stopped.item, 0));
  });

  it('does not ask at a burner that stays as it is', () => {
    const setup = start('dead-transformer');
    expect(whatFollowsHere(setup, setup.actions, 600, 0)).toEqual({
      ok: false,
      why: 'nothing follows',
    });
  });

  it('is said in whole sentences, without a code left over', () => {
    const setup = start('healthy-start');
    const here = whatFollowsHere(setup, setup.actions, 75, 1);
    if (!here.ok) throw new Error(here.why);
    const worded = wordItem(here.item, namesOfPlant(setup.plant, createRun(setup).channels));
    const texts = JSON.stringify(worded);
    expect(texts).not.toMatch(/quiz\.|undefined|\{[a-z]+\}/);
    // It comes from no seed, so that its name is none of the bank's.
    expect(lintItem(here.item).filter(({ rule }) => rule !== 'id')).toEqual([]);
  });
});
