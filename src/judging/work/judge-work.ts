import { faultsFor, type Run, type RunSetup } from '../../engine/index.ts';
import type { ExerciseAnswer } from '../../scenario/index.ts';
import { judgeClaims, standingClaims } from './judge-claims.ts';
import { needlessWork } from './needless-work.ts';
import type { Verdict } from './verdict.ts';
import type { WorkBench, WorkDone } from './work-done.ts';

/** How long the plant is left alone after the work, to see whether it stays mended. */
const LEFT_ALONE_S = 1800;
const IN_SERVICE = 'modulation';

/** What comes of the work: what the bench makes of it, and what the plant does without anybody. */
export function judgeWork(
  bench: Pick<WorkBench, 'judge' | 'minutes'>,
  createRun: (setup: RunSetup) => Run,
  done: WorkDone,
  answer: ExerciseAnswer | null,
): Verdict {
  return judgeWorkAndRun(bench, createRun, done, answer).verdict;
}

/** The same, with the hash of the run where the work ended. */
export function judgeWorkAndRun(
  bench: Pick<WorkBench, 'judge' | 'minutes'>,
  createRun: (setup: RunSetup) => Run,
  done: WorkDone,
  answer: ExerciseAnswer | null,
): { readonly verdict: Verdict; readonly hash: string } {
  const { setup, log, desk, untilS } = done;
  const run = createRun({ ...setup, actions: [...log] });
  const faults = faultsBrought(done);
  const needless = needlessWork(
    run,
    setup,
    faults.map(({ id }) => id),
    log,
    desk,
  );
  run.advanceTo(untilS);
  const hash = run.hash();
  const standing = new Set(run.standingFaults().map(({ fault }) => fault));
  const before = run.events().length;
  const wasInService = run.status().step === IN_SERVICE;
  run.advanceTo(untilS + LEFT_ALONE_S);
  const after = run.events().slice(before);
  for (const event of after) if (event.type === 'fault' && event.on) standing.add(event.fault);
  const lockout =
    after.find((event) => event.type === 'lockout')?.cause ?? run.status().lockout ?? null;
  const ran =
    wasInService || after.some((event) => event.type === 'step' && event.step === IN_SERVICE);
  const { conduct, proof } = bench.judge(done);
  const claims = standingClaims(desk);
  const verdict: Verdict = {
    conduct: [...conduct],
    minutes: bench.minutes(done, run.parts()),
    proof,
    truth: { faults },
    standing: [...standing],
    held: { held: lockout === null, forS: LEFT_ALONE_S, lockout, ran },
    needless,
    ...(answer === null ? { claims: [], missed: [] } : judgeClaims(answer, claims)),
  };
  return { verdict, hash };
}

/** What the exercise put in: from the start on, or among what was done before the visit. */
function faultsBrought({ setup }: WorkDone): Verdict['truth']['faults'] {
  const inserted = setup.actions.flatMap((action) =>
    action.type === 'insert-fault' ? [{ fault: action.fault, severity: action.severity }] : [],
  );
  const brought = [...setup.faults, ...inserted];
  const known = brought.length === 0 ? [] : faultsFor(setup.plant);
  return brought.flatMap(({ fault, severity }) => {
    const found = known.find(({ id }) => id === fault);
    if (found === undefined) return [];
    const { id, mechanism, component, repair } = found;
    return [{ id, mechanism, component, repair, severity }];
  });
}
