import type { Times } from './figures.ts';
import type { LearnersAnswer, LearnersQuestion } from './learners.ts';
import { openClasses } from './open-classes.ts';
import { type ServerProcess, startServerProcess, startTalking } from './processes.ts';

export interface FanOut {
  readonly servers: number;
  readonly classes: number;
  readonly learners: number;
  readonly command: Times;
  /** The same to as many by a server that does nothing else. */
  readonly bare: Times;
  /** Of all servers together, bytes: what each learner adds. */
  readonly memoryEach: number;
  /** Receipts that did not come. */
  readonly missing: number;
}

export interface FanOutAsked {
  readonly servers: number;
  readonly classes: number;
  readonly learners: number;
  readonly commands: number;
  readonly everyMs: number;
  /** What the servers stand on, as settings. */
  readonly environment: Readonly<Record<string, string>>;
}

type Learners = ReturnType<typeof startTalking<LearnersQuestion, LearnersAnswer>>;

/** How long a command takes from its instructor to each learner, beside a bare broadcast. */
export async function measureFanOut(asked: FanOutAsked): Promise<FanOut> {
  const learners = startTalking<LearnersQuestion, LearnersAnswer>('./learners.ts');
  const processes: ServerProcess[] = [];
  try {
    const { servers, classes, environment } = asked;
    const bare = await startServerProcess('./bare-broadcast.ts', {});
    processes.push(bare);
    // A class is told as many as it has: so many are in the bare one too.
    const inClass = Math.ceil(asked.learners / classes);
    const first = await measure(learners, asked, {
      urls: [bare.url],
      classes: [],
      learners: inClass,
    });
    await bare.kill();
    for (let count = 0; count < servers; count++) {
      processes.push(await startServerProcess('../house/serve-classes.ts', environment));
    }
    const own = processes.slice(1);
    const urls = own.map(({ url }) => url);
    const opened = await openClasses(urls[0] ?? '', classes);
    const before = await memoryOf(own);
    const given = { urls, classes: opened, learners: asked.learners };
    let memory = 0;
    const second = await measure(learners, asked, given, async () => {
      memory = (await memoryOf(own)) - before;
    });
    return {
      servers,
      classes,
      learners: asked.learners,
      command: second.times,
      bare: first.times,
      memoryEach: memory / asked.learners,
      missing: first.missing + second.missing,
    };
  } finally {
    await Promise.all([learners.end(), ...processes.map((one) => one.kill())]);
  }
}

async function measure(
  learners: Learners,
  { commands, everyMs }: FanOutAsked,
  given: Omit<Extract<LearnersQuestion, { do: 'come in' }>, 'do'>,
  meanwhile: () => Promise<void> = async () => {},
): Promise<LearnersAnswer> {
  await learners.ask({ do: 'come in', ...given });
  // The first ones find everything cold.
  await learners.ask({ do: 'commands', count: 3, everyMs });
  const answer = await learners.ask({ do: 'commands', count: commands, everyMs });
  await meanwhile();
  await learners.ask({ do: 'leave' });
  return answer;
}

async function memoryOf(servers: readonly ServerProcess[]): Promise<number> {
  const each = await Promise.all(servers.map((server) => server.memory()));
  return each.reduce((sum, one) => sum + one, 0);
}
