import { scripted } from '../../diagnosis/index.ts';
import { soundSetup } from '../../judging/work/index.ts';
import { setupOfRun } from '../../quiz/index.ts';
import type { LearnerLibrary } from '../../scenario/index.ts';
import { openFailure, type Stage } from './host-ports.ts';
import type { ShownItem } from './item-run-schema.ts';
import { HEALTHY_UNTIL_S, stageOf } from './stage.ts';

/** How far past its record a start is run on once the answer is given, s. */
export const RUNS_ON_S = 300;

/** The start of a quiz item: its record at once, to be looked back on; nothing is done to it. */
export function openItemStage(
  library: LearnerLibrary,
  id: string,
  { run, runsOn }: ShownItem,
): Stage {
  const sound = soundSetup(library, run.plant);
  if (sound === null) throw openFailure('unknown scenario', id);
  const endS = run.untilS + (runsOn ? RUNS_ON_S : 0);
  return stageOf(setupOfRun({ setup: scripted(sound) }, run), {
    kind: 'quiz',
    card: { id, title: sound.plant.title, summary: '', caution: null },
    allow: [],
    arriveS: run.untilS,
    endS,
    // A sound run beside it tells what comes next, which may be what is asked.
    healthyUntilS: runsOn ? Math.min(endS, HEALTHY_UNTIL_S) : 0,
    answer: null,
  });
}
