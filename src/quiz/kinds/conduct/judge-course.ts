import { type ConductFinding, conductOf, type JobTrace, traceJob } from '../../../bench/index.ts';
import type { QuizPlant } from '../../item/maker.ts';
import { setupOfRun } from '../../item/setup-of-run.ts';
import type { Scene } from './scene.ts';
import { type Laid, layOut, type Step } from './step.ts';

export interface JudgedCourse {
  readonly steps: readonly Step[];
  readonly laid: Laid;
  readonly trace: JobTrace;
  readonly findings: readonly ConductFinding[];
  /** When the course itself began, behind what was done before it, s. */
  readonly fromS: number;
  /** Where it is said that there are no volts, there are none. */
  readonly isTrue: boolean;
}

const DEAD_V = 30;

/** A course as it goes at the plant, judged as any work there is judged. */
export function judgeCourse(
  { plan }: QuizPlant,
  { run, before }: Pick<Scene, 'run' | 'before'>,
  steps: readonly Step[],
): JudgedCourse {
  const laid = layOut(run.untilS, [...before, ...steps]);
  const { log, desk, untilS, saidDeadS } = laid;
  const trace = traceJob(setupOfRun(plan, run), log, desk, untilS);
  const isTrue = trace.acts.every(
    ({ action, leads }) => !saidDeadS.includes(action.t) || (leads?.volts ?? 0) < DEAD_V,
  );
  const fromS = layOut(run.untilS, before).untilS;
  return { steps, laid, trace, findings: conductOf(trace, desk), fromS, isTrue };
}
