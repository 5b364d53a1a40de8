import { describe, expect, it } from 'vitest';
import { foldDesk } from '../../../machines/index.ts';
import { decisionsOf } from '../../../src/diagnosis/index.ts';
import { jobSetup } from '../../../src/scenario/index.ts';
import { library } from '../../support/library.ts';
import { type Asked, workJob } from '../../support/robot.ts';
import { planFor, toldBy } from './real-visits.ts';

/** One question of each kind, at each kind of moment. */
const PATH: readonly Asked[] = [
  { check: 'history|', moment: 'lockout' },
  { check: 'look|fuses', moment: 'standing' },
  { check: 'look|pilot flame', moment: 'pilot trial' },
  { check: 'listen|', moment: 'pilot trial' },
  { check: 'manometer|pilot', moment: 'purge' },
  { check: 'volts|52', moment: 'spark check' },
  { check: 'flue-gas analyser|flue', moment: 'pilot trial' },
  { check: 'continuity|pilot-valve:1|pilot-valve:2', moment: 'isolated' },
  { check: 'look|sight glass', moment: 'at rest' },
  { check: 'commissioning sheet|', moment: 'standing' },
];

describe('a robot that works a job', () => {
  const setup = jobSetup(library, 'job', 'laundry-evening-wash');
  if (setup === null) throw new Error('no such job');
  const plan = planFor(setup.plant.id);
  const { log, desk, untilS } = workJob(setup, plan, PATH);
  const decisions = decisionsOf(setup, log, desk, untilS, plan);

  it.each(PATH)('is told by $check at the moment $moment', ({ check, moment }) => {
    expect(Object.keys(toldBy(decisions, check, moment))).not.toEqual([]);
  });
  it('pins each of them where it asked it, and claims by them', () => {
    const claim = decisions.find(({ kind }) => kind === 'claim');
    expect(claim?.kind === 'claim' && claim.why).toEqual(PATH);
  });
  it('writes nothing that the desk does not take, and hands over', () => {
    const state = foldDesk('job', {}, desk);
    expect(state.entries).toEqual(desk);
    expect(state.phase).toBe('debrief');
  });
  it('mends the plant: its last start comes into service', () => {
    const last = decisions.filter(({ kind }) => kind === 'watch').slice(-1);
    expect(toldBy(last, 'watch one start|', 'standing')).toEqual({ 'ends in': 'modulation' });
  });
  it('reads nothing after the work of the lockout that was there before', () => {
    const at = decisions.findIndex(({ kind }) => kind === 'work');
    expect(at).toBeGreaterThan(0);
    const after = decisions.slice(at).flatMap((one) => ('seen' in one ? one.seen : []));
    expect(after.filter((seen) => seen.moment === 'lockout')).toEqual([]);
  });
});
