import { faultsFor, type Run, type RunSetup } from '../../engine/index.ts';
import type { BenchPort, WorkDone } from './bench-port.ts';
import type { Verdict } from './work-protocol.ts';

/** How long the plant is left alone after the work, to see whether it stays mended. */
const LEFT_ALONE_S = 1800;

/** What comes of the work: what the bench makes of it, and what the plant does without anybody. */
export function judgeWork(
  bench: BenchPort,
  createRun: (setup: RunSetup) => Run,
  done: WorkDone,
): Verdict {
  const { setup, log, untilS } = done;
  const run = createRun({ ...setup, actions: [...log] });
  run.advanceTo(untilS);
  const standing = new Set(run.standingFaults().map(({ fault }) => fault));
  const before = run.events().length;
  run.advanceTo(untilS + LEFT_ALONE_S);
  const after = run.events().slice(before);
  for (const event of after) if (event.type === 'fault' && event.on) standing.add(event.fault);
  const lockout =
    after.find((event) => event.type === 'lockout')?.cause ?? run.status().lockout ?? null;
  const { conduct, proof } = bench.judge(done);
  return {
    conduct: [...conduct],
    minutes: bench.minutes(done, run.parts()),
    proof,
    truth: { faults: faultsBrought(done) },
    standing: [...standing],
    held: { held: lockout === null, forS: LEFT_ALONE_S, lockout },
  };
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
