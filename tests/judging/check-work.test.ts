/** What cannot have been done is refused, with its place; what can is not. */
import library from 'virtual:library';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Action, INSTRUCTOR_ACTS, type TimedAction } from '../../src/engine/index.ts';
import { checkWork, type HandedIn, partsOfWork, WORK_REFUSALS } from '../../src/judging/index.ts';
import { exerciseSetup } from '../../src/judging/work/index.ts';
import { FORGERIES } from '../../src/records/class/index.ts';
import { HANDED_IN, JOB, VISIT } from './handed-in.ts';

const setup = exerciseSetup(library, 'job', JOB.id);
if (setup === null) throw new Error('no job');
const { arriveS } = setup;
const LOG = VISIT.log;
const own = setup.setup.actions.length;
const FIRST_BY_HAND = LOG.findIndex(({ t }) => t >= arriveS);

const check = (change: Partial<HandedIn>) => checkWork(setup, { ...HANDED_IN, ...change });
const timed = (place: number, t: number) =>
  LOG.map((act, i) => (i === place ? { ...act, t } : act));
/** Anything that only an instructor does. */
const CUT_GAS = { type: 'set-gas-supply', share: 0 } as const;
const CLEAR = { type: 'clear-fault', fault: 'strainer blocked' } as const;
const INSERT = { type: 'insert-fault', fault: 'strainer blocked', severity: 0.5 } as const;

function withAct(act: Action, place: number): readonly TimedAction[] {
  const t = LOG[place]?.t ?? VISIT.headS;
  return [...LOG.slice(0, place), { t, ...act } as TimedAction, ...LOG.slice(place)];
}

describe('a log that was handed in', () => {
  it('is taken as the simulator wrote it', () => {
    expect(own).toBeGreaterThan(0);
    expect(check({})).toMatchObject({ ok: true, log: LOG, orderedDone: 0 });
  });

  it('may not have an act of the instructor anywhere that nobody ordered', () => {
    fc.assert(
      fc.property(
        fc.constantFrom<Action>(CUT_GAS, CLEAR, INSERT),
        fc.integer({ min: FIRST_BY_HAND, max: LOG.length }),
        (act, place) => {
          expect(INSTRUCTOR_ACTS).toContain(act.type);
          expect(check({ log: withAct(act, place) })).toMatchObject({
            ok: false,
            why: 'not ordered',
            where: `log.${place}`,
          });
        },
      ),
      { seed: 11, numRuns: 40 },
    );
  });

  it('may have one that was ordered, as it was ordered and once', () => {
    const log = withAct(INSERT, FIRST_BY_HAND + 2);
    expect(check({ log, ordered: [CLEAR, INSERT] })).toMatchObject({ ok: true, orderedDone: 1 });
    const stronger = { ...INSERT, severity: 0.1 };
    expect(check({ log, ordered: [stronger] })).toMatchObject({ why: 'not ordered' });
    const twice = [...log.slice(0, FIRST_BY_HAND + 3), ...log.slice(FIRST_BY_HAND + 2)];
    expect(check({ log: twice, ordered: [INSERT] })).toMatchObject({
      why: 'not ordered',
      where: `log.${FIRST_BY_HAND + 3}`,
    });
  });

  it.each<[string, Partial<HandedIn>, string, string]>([
    [
      'going back in time',
      { log: timed(LOG.length - 1, arriveS + 1) },
      'out of order',
      `log.${LOG.length - 1}`,
    ],
    [
      'at a moment between two steps',
      { log: timed(LOG.length - 1, (LOG.at(-1)?.t ?? 0) + 0.003) },
      'between steps',
      `log.${LOG.length - 1}`,
    ],
    [
      'before the arrival',
      { log: [{ t: 0, type: 'supply', on: false }, ...LOG] },
      'before arriving',
      'log.0',
    ],
    [
      'after the end',
      { log: [...LOG, { t: VISIT.headS + 1, type: 'supply', on: false }] },
      'after the end',
      `log.${LOG.length}`,
    ],
    ['without what came before the visit', { log: LOG.slice(own) }, 'own acts changed', 'log'],
    [
      'with words that are no act',
      { log: [...LOG, { t: VISIT.headS, type: 'mend all' }] },
      'not understood',
      `log.${LOG.length}`,
    ],
    [
      'with a field too much',
      { log: [...LOG, { t: VISIT.headS, type: 'supply', on: true, by: 'me' }] },
      'not understood',
      `log.${LOG.length}`,
    ],
    [
      'longer than a person makes it',
      { log: Array.from({ length: 6000 }, () => LOG.at(-1)) },
      'too long',
      'log.5000',
    ],
    ['that ends before the arrival', { untilS: arriveS - 1 }, 'before arriving', ''],
    ['that ends at no time', { untilS: Number.NaN }, 'before arriving', ''],
    ['that goes on for ever', { untilS: 1e9 }, 'after the end', ''],
    [
      'with paper that goes back in time',
      { desk: [...VISIT.desk.slice(0, 4), { ...VISIT.desk[4], t: arriveS }] },
      'out of order',
      'desk.4',
    ],
    [
      'with a claim on a reading that was never pinned',
      {
        desk: [
          ...VISIT.desk.slice(0, 2),
          { t: arriveS + 99, type: 'claim', part: 'strainer', why: [7], mechanism: '' },
        ],
      },
      'desk refuses',
      'desk.2',
    ],
    [
      'with paper written after the end',
      { desk: [...VISIT.desk.slice(0, 2), { t: VISIT.headS + 5, type: 'note', text: '' }] },
      'after the end',
      'desk.2',
    ],
  ])('%s is refused', (_how, change, why, where) => {
    expect(check(change)).toMatchObject({ ok: false, why, where });
  });

  it('never makes the check throw, whatever it holds', () => {
    fc.assert(
      fc.property(fc.array(fc.anything()), fc.array(fc.anything()), (log, desk) => {
        const checked = check({ log: [...LOG.slice(0, own), ...log], desk });
        if (checked.ok) return;
        expect(WORK_REFUSALS).toContain(checked.why);
      }),
      { seed: 5, numRuns: 300 },
    );
  });
});

describe('what a class keeps of a forgery', () => {
  it('is its code and place and no outcome', () => {
    const checked = check({ log: withAct(INSERT, FIRST_BY_HAND) });
    if (checked.ok) throw new Error('taken');
    const parts = partsOfWork(checked, { outcome: 1, hash: VISIT.hash });
    expect(parts).toMatchObject({ outcome: null, refused: true, hash: null });
    expect(parts.remarks).toMatchObject([{ code: 'not ordered', where: `log.${FIRST_BY_HAND}` }]);
  });

  it('can be said for each refusal there is', () => {
    for (const why of WORK_REFUSALS) expect(FORGERIES).toContain(why);
  });
});
