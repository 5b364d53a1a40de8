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
  /** Processor time for each learner while commands were given, ms; beside that of the bare one. */
  readonly cpuMs: number;
  readonly bareCpuMs: number;
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

const LOOKS = 20;
const LOOK_EVERY_MS = 250;

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
    const first = await measure(learners, asked, [bare], {
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
    const second = await measure(learners, asked, own, {
      urls,
      classes: opened,
      learners: asked.learners,
    });
    return {
      servers,
      classes,
      learners: asked.learners,
      command: second.times,
      bare: first.times,
      cpuMs: (second.cpuS * 1000) / asked.learners,
      bareCpuMs: (first.cpuS * 1000) / inClass,
      memoryEach: second.memory / asked.learners,
      missing: first.missing + second.missing,
    };
  } finally {
    await Promise.all([learners.end(), ...processes.map((one) => one.kill())]);
  }
}

interface Measured extends LearnersAnswer {
  /** That they added, of all servers together, bytes. */
  readonly memory: number;
  /** Of all servers together, while commands were given, s. */
  readonly cpuS: number;
}

async function measure(
  learners: Learners,
  { commands, everyMs }: FanOutAsked,
  servers: readonly ServerProcess[],
  given: Omit<Extract<LearnersQuestion, { do: 'come in' }>, 'do'>,
): Promise<Measured> {
  const empty = await leastMemory(servers);
  await learners.ask({ do: 'come in', ...given });
  // The first ones find everything cold.
  await learners.ask({ do: 'commands', count: 3, everyMs });
  const before = await sumOf(servers);
  const answer = await learners.ask({ do: 'commands', count: commands, everyMs });
  const after = await sumOf(servers);
  const memory = (await leastMemory(servers)) - empty;
  await learners.ask({ do: 'leave' });
  return { ...(answer as LearnersAnswer), memory, cpuS: after.cpuS - before.cpuS };
}

/** What is there just after litter was taken out, as nearly as looking several times can tell. */
async function leastMemory(servers: readonly ServerProcess[]): Promise<number> {
  let least = Number.POSITIVE_INFINITY;
  for (let looks = 0; looks < LOOKS; looks++) {
    least = Math.min(least, (await sumOf(servers)).memory);
    await new Promise((resolve) => setTimeout(resolve, LOOK_EVERY_MS));
  }
  return least;
}

async function sumOf(servers: readonly ServerProcess[]) {
  const each = await Promise.all(servers.map((server) => server.figures()));
  return each.reduce((sum, one) => ({
    memory: sum.memory + one.memory,
    cpuS: sum.cpuS + one.cpuS,
  }));
}
