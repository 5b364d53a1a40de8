/** The best way of the paper case, walked by hands at the real plant. */
import { describe, expect, it } from 'vitest';
import {
  decisionsOf,
  diagnoseCase,
  howFared,
  LEARNERS,
  outcomeOf,
  reasonAbout,
  withoutCircumstances,
} from '../../../src/diagnosis/index.ts';
import { jobSetup } from '../../../src/scenario/index.ts';
import { library } from '../../support/library.ts';
import { workJob } from '../../support/robot.ts';
import { caseOfJob, exerciseOf } from '../shipped-cases.ts';

const LONG_MS = 240_000;
const JOBS = ['school-cold-classrooms', 'laundry-evening-wash', 'dairy-air-that-never-came'];

describe('the ideal path, walked through the real plant', () => {
  it.each(JOBS)(
    'of %s scores about as it does on paper',
    (id) => {
      const setup = jobSetup(library, 'job', id);
      if (setup === null) throw new Error(`no job ${id}`);
      const exercise = exerciseOf(id);
      const theCase = caseOfJob(id);
      const path = diagnoseCase(exercise).rounds.flatMap((round) => round.path);
      const { log, desk, untilS } = workJob(setup, exercise.plan, path);
      const decisions = withoutCircumstances(
        theCase.atlas,
        theCase.own,
        decisionsOf(setup, log, desk, untilS, exercise.plan),
      );
      const walked = reasonAbout(theCase, decisions);
      const onPaper = howFared(theCase, LEARNERS[0] as (typeof LEARNERS)[number], 1);
      expect(onPaper.found).toBe('by readings');
      expect(walked.found).toBe('by readings');
      // Hands have to start the burner to come to a step, and prove what they did: a few minutes more.
      expect(outcomeOf(walked, false)).toBeGreaterThan(onPaper.outcome - 0.2);
      expect(walked.path.premature).toBe(0);
    },
    LONG_MS,
  );
});
