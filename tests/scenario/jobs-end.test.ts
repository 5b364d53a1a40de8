import { describe, expect, it } from 'vitest';
import { createRun } from '../../src/engine/index.ts';
import { sayMessage } from '../../src/i18n/index.ts';
import {
  checkExpectation,
  type ExerciseKind,
  firstStartOf,
  type Job,
  jobSetup,
} from '../../src/scenario/index.ts';
import { timedAction } from '../../src/scenario/timed-action.ts';
import { library } from '../support/library.ts';
import { arrive, firstRemedy, HELD_S, mendAll, startAfter } from '../support/mend.ts';

const { jobs, drills, lessons } = library;
/** Three starts could have been made by then. */
const WAITED_S = 900;

function setupOf(kind: ExerciseKind, id: string, choices = {}) {
  const setup = jobSetup(library, kind, id, choices);
  if (setup === null) throw new Error(`no ${kind} ${id}`);
  return setup;
}

describe.each(jobs.map((job) => [job.id, job] as const))('the job %s', (id, job) => {
  it('shows what it promises in its first start', () => {
    const { actions, untilS } = firstStartOf(job);
    const run = createRun(setupOf('job', id, { actions }), { keep: 'hash only' });
    run.advanceTo(untilS);
    expect(checkExpectation(run.events(), job.expect).map(sayMessage)).toEqual([]);
  });
  if (job.userError === undefined) {
    it('is ended by the remedies of its faults, done in safety, and then runs', () => {
      const setup = setupOf('job', id);
      const hands = arrive(setup, setup.arriveAt);
      mendAll(hands, setup.faults);
      expect(hands.run.standingFaults()).toEqual([]);
      expect(startAfter(hands)).toBe('held in service');
      expect(hands.run.standingFaults()).toEqual([]);
    });
    it('is of faults of which each needs an act of its own', () => {
      const setup = setupOf('job', id);
      const acts = setup.faults.map(({ fault }) => JSON.stringify(firstRemedy(fault, setup)));
      expect(acts).toEqual([...new Set(acts)]);
    });
  } else {
    const { mend } = job.userError;
    it('is ended by undoing what the user did, and then runs', () => {
      const setup = setupOf('job', id, { actions: mend.map(timedAction) });
      const last = Math.max(setup.arriveAt, ...mend.map(({ at }) => at));
      const hands = arrive(setup, last + 1);
      expect(hands.run.standingFaults()).toEqual([]);
      expect(startAfter(hands)).toBe('held in service');
    });
    it('is not ended by waiting, unless it is the rate that the user has in hand', () => {
      const setup = setupOf('job', id);
      const { run } = arrive(setup, setup.arriveAt + WAITED_S);
      const { step, sinceS } = run.status();
      const inService = step === 'modulation' && run.timeS() - sinceS >= HELD_S;
      expect(inService).toBe(mend.some((action) => action.do === 'firing'));
    });
  }
  it('names none of its faults before the debrief', () => {
    const { title, site, card, people, sheet } = job;
    const told = JSON.stringify([id.replaceAll('-', ' '), title, site, card, people, sheet]);
    for (const { fault } of job.faults) expect(told.toLowerCase()).not.toContain(fault);
  });
  it('is told by people who are not all right, from level 2 on', () => {
    const truths = job.people.map(({ truth }) => truth);
    if (job.level > 1) expect(truths.some((truth) => truth !== 'true')).toBe(true);
  });
});

describe.each(drills.map((drill) => [drill.id, drill] as const))('the drill %s', (id, drill) => {
  it('shows what it promises', () => {
    const expected = drill.expect ?? { lockout: 'none' as const, by: 0 };
    const { actions, untilS } = firstStartOf(drill);
    const run = createRun(setupOf('drill', id, { actions }), { keep: 'hash only' });
    run.advanceTo(untilS);
    expect(checkExpectation(run.events(), expected).map(sayMessage)).toEqual([]);
  });
});

describe.each(lessons.map((lesson) => [lesson.id, lesson] as const))(
  'the lesson %s',
  (id, { steps, until }) => {
    it('stops at steps that its start enters in this order', () => {
      const run = createRun(setupOf('lesson', id), { keep: 'hash only' });
      run.advanceTo(until);
      const expected = {
        steps: steps.map(({ step }) => step),
        lockout: 'none' as const,
        by: until,
      };
      expect(checkExpectation(run.events(), expected).map(sayMessage)).toEqual([]);
    });
    const breakable = steps.flatMap(({ step, tryBreaking }) =>
      tryBreaking === undefined ? [] : [[step, tryBreaking] as const],
    );
    it('lets the learner break something', () => expect(breakable.length).toBeGreaterThan(0));
    it.each(breakable)('stops the burner when the thing is broken in %s', (step, breaking) => {
      const run = createRun(setupOf('lesson', id), { keep: 'hash only' });
      while (run.status().step !== step) run.advanceTo(run.timeS() + 0.1);
      run.act({ type: 'insert-fault', fault: breaking.fault, severity: breaking.severity });
      run.advanceTo(run.timeS() + 240);
      expect(run.events().some(({ type }) => type === 'lockout')).toBe(true);
    });
  },
);

describe('the shipped jobs', () => {
  const plants = (all: readonly Pick<Job, 'plant'>[]) =>
    [...new Set(all.map(({ plant }) => plant))].sort();
  it('are on every plant, and so are the lessons', () => {
    const all = library.plants.map(({ id }) => id).sort();
    expect(plants(jobs)).toEqual(all);
    expect(plants(lessons)).toEqual(all);
  });
});
