import { app } from './app.ts';
import { bench } from './bench.ts';
import { classroom } from './class.ts';
import { classResult } from './class-result.ts';
import { cli } from './cli.ts';
import { closeUp } from './close-up.ts';
import { conduct } from './conduct.ts';
import { debrief } from './debrief.ts';
import { debriefBranch } from './debrief-branch.ts';
import { debriefWay } from './debrief-way.ts';
import { front } from './front.ts';
import { guidance } from './guidance.ts';
import { job } from './job.ts';
import { ladder } from './ladder.ts';
import { learner } from './learner.ts';
import { lms } from './lms.ts';
import { packages } from './package.ts';
import { quiz } from './quiz.ts';
import { quizCalculation } from './quiz-calculation.ts';
import { quizCause } from './quiz-cause.ts';
import { quizConduct } from './quiz-conduct.ts';
import { quizPaper } from './quiz-paper.ts';
import { quizReading } from './quiz-reading.ts';
import { quizStem } from './quiz-stem.ts';
import { scenario } from './scenario.ts';
import { sequence } from './sequence.ts';
import { teachClass } from './teach-class.ts';
import { teachPoll } from './teach-poll.ts';
import { teachResults } from './teach-results.ts';
import { teachScenarios } from './teach-scenarios.ts';
import { view } from './view.ts';

/** Every English sentence of the program; a code stands in one file only. The page fetches it in parts. */
export const en = {
  ...front,
  ...app,
  ...bench,
  ...classResult,
  ...cli,
  ...classroom,
  ...closeUp,
  ...conduct,
  ...debrief,
  ...debriefBranch,
  ...debriefWay,
  ...guidance,
  ...job,
  ...ladder,
  ...learner,
  ...lms,
  ...packages,
  ...quiz,
  ...quizCalculation,
  ...quizCause,
  ...quizConduct,
  ...quizPaper,
  ...quizReading,
  ...quizStem,
  ...scenario,
  ...sequence,
  ...teachClass,
  ...teachPoll,
  ...teachResults,
  ...teachScenarios,
  ...view,
} as const;
