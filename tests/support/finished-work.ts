/** Work on a job as the device keeps it, done by acts and not by hands: for tests that begin at its end. */
import { type DeskEvent, foldDesk, takeEntry } from '../../machines/job/index.ts';
import { openStage } from '../../src/app/session/stage.ts';
import { WORK_VERSION, type WorkRecord } from '../../src/app/work/work-record.ts';
import { type Action, createRun, type PlantPart } from '../../src/engine/index.ts';
import { library } from './library.ts';

export const STARTED_ISO = '2026-11-28T22:00:00.000Z';
/** A click and the next are so far apart at least, s. */
const A_CLICK_S = 2;
/** Longer than a cold start with its warm-up at low fire, s. */
const A_START_S = 2400;

export interface Hands {
  act(...actions: Action[]): void;
  check(what: string, place: string, other?: string): void;
  repair(part: string, way: string): void;
  write(event: DeskEvent): void;
  wait(seconds: number): void;
  /** Until the run enters a step; throws where it never does. */
  until(step: string): void;
}

/** @param visit from the card to the closing of the job */
export function finishedWork(id: string, visit: (hands: Hands) => void): WorkRecord {
  const job = library.jobs.find((one) => one.id === id);
  if (job === undefined) throw new Error(`no job ${id}`);
  const stage = openStage(library, id, 'job');
  const run = createRun(stage.setup);
  const { work, arriveS } = stage.facts(run);
  run.advanceTo(arriveS);
  let desk = foldDesk('job', { tools: job.tools }, []);
  const wait = (seconds: number) => run.advanceTo(Math.round((run.timeS() + seconds) * 10) / 10);
  const act = (...actions: Action[]) => {
    for (const action of actions) {
      run.act(action);
      wait(A_CLICK_S);
    }
  };
  visit({
    act,
    wait,
    check: (what, place, other = '') => act({ type: 'check', what, place, other }),
    repair: (part, way) => act({ type: 'repair', part, way: way as PlantPart['ways'][number] }),
    write(event) {
      const taken = takeEntry(desk, { ...event, t: run.timeS() });
      if (!taken.ok) throw new Error(`${event.type}: ${taken.refusal}`);
      desk = taken.state;
      wait(A_CLICK_S);
    },
    until(step) {
      const endS = run.timeS() + A_START_S;
      while (run.status().step !== step) {
        if (run.timeS() > endS) throw new Error(`never came to ${step}`);
        wait(0.1);
      }
    },
  });
  return {
    v: WORK_VERSION,
    kind: 'job',
    id,
    seed: work.seed,
    startedISO: STARTED_ISO,
    savedISO: STARTED_ISO,
    log: [...run.log()],
    pending: [],
    desk: [...desk.entries],
    headS: run.timeS(),
    hash: run.hash(),
    setupHash: work.setupHash,
    uses: [],
  };
}
