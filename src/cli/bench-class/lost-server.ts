import { startBalancer } from './balancer.ts';
import { openClasses } from './open-classes.ts';
import { startServerProcess, startTalking } from './processes.ts';
import type { SeatsAnswer, SeatsQuestion } from './seats.ts';

export interface LostServer {
  readonly learners: number;
  readonly lost: number;
  readonly backMs: number;
  readonly acts: number;
  readonly actsMissing: number;
  readonly entries: number;
  readonly otherEntries: number;
}

/** Long enough for acts to be told before and after, ms. */
const WORK_FOR_MS = 5000;

/** Two servers behind one address, one of which is ended by force in the middle of a class. */
export async function measureLostServer(
  learners: number,
  environment: Readonly<Record<string, string>>,
): Promise<LostServer> {
  const file = '../house/serve-classes.ts';
  const [first, second] = [
    await startServerProcess(file, environment),
    await startServerProcess(file, environment),
  ];
  const balancer = await startBalancer([first.port, second.port]);
  const seats = startTalking<SeatsQuestion, SeatsAnswer>('./seats.ts');
  try {
    const [opened] = await openClasses(balancer.url, 1);
    if (opened === undefined) throw new Error('no class');
    await seats.ask({ do: 'come in', url: balancer.url, opened, learners });
    await later(WORK_FOR_MS);
    const back = seats.ask({ do: 'come back' });
    await first.kill();
    const { lost, backMs } = await back;
    await later(WORK_FOR_MS);
    const { acts, actsMissing, entries, otherEntries } = await seats.ask({ do: 'finish' });
    return { learners, lost, backMs, acts, actsMissing, entries, otherEntries };
  } finally {
    await Promise.all([seats.end(), balancer.close(), first.kill(), second.kill()]);
  }
}

function later(ms: number): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, ms));
}
