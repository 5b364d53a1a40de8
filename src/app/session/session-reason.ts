/** The page's end of reasoning: one question at a time to a worker of its own, made at the first. */
import type { DeskEntry } from '../../../machines/job/index.ts';
import { fromReasonerSchema, type Reasoned } from './reasoning-protocol.ts';
import type { SavedRun, SessionOpening, WorkerLike } from './session-types.ts';
import type { ToReasoner } from './to-reasoner.ts';

export interface ReasonerWays {
  /** In its own thread: reasoning takes longer than a picture may. */
  startWorker(): WorkerLike<ToReasoner>;
  /** Address of the folder of the atlases. */
  readonly atlases: string;
}

/** What an answer is made of; nothing of it changed, it is the same answer. */
interface Done {
  readonly desk: readonly DeskEntry[];
  readonly log: SavedRun['log'];
  readonly headS: number;
}
interface Asked {
  readonly desk: readonly DeskEntry[];
  readonly answers: ((reasoned: Reasoned) => void)[];
}

const NOTHING: Reasoned = {
  reasoning: null,
  trouble: null,
  detail: '',
  upTo: { log: 0, desk: 0 },
};

export function createReasonSide(
  ways: ReasonerWays | null,
  { kind, id, given, seed }: Pick<SessionOpening, 'kind' | 'id' | 'given' | 'seed'>,
  savedNow: () => SavedRun | null,
) {
  let worker: WorkerLike<ToReasoner> | null = null;
  let number = 0;
  let out: Asked | null = null;
  /** The newest of those that came while one was out; what came before it is answered with it. */
  let next: Asked | null = null;
  let outOf: Done | null = null;
  let known: { readonly of: Done; readonly reasoned: Reasoned } | null = null;

  function send(asked: Asked): void {
    const saved = savedNow();
    if (ways === null || (kind !== 'job' && kind !== 'drill') || saved === null) {
      settle(asked, NOTHING);
      return;
    }
    const { log, headS } = saved;
    const done: Done = { desk: asked.desk, log, headS };
    if (known !== null && isSame(known.of, done)) {
      settle(asked, known.reasoned);
      return;
    }
    worker ??= start(ways);
    out = asked;
    outOf = done;
    number += 1;
    worker.postMessage({
      type: 'reason',
      ask: number,
      kind,
      id,
      ...(given === undefined ? {} : { given }),
      ...(seed === undefined ? {} : { seed }),
      log: [...log],
      desk: [...asked.desk],
      untilS: headS,
      atlases: ways.atlases,
    });
  }

  function start({ startWorker }: ReasonerWays): WorkerLike<ToReasoner> {
    const started = startWorker();
    started.onmessage = (event) => {
      const parsed = fromReasonerSchema.safeParse(event.data);
      if (!parsed.success) {
        come(brokenOff(parsed.error.message));
        return;
      }
      const { type: _, ask, ...reasoned } = parsed.data;
      if (ask === number) come(reasoned);
    };
    started.onerror = (event) => {
      // The next question starts another one.
      started.terminate();
      worker = null;
      come(brokenOff(event.message ?? ''));
    };
    return started;
  }

  function come(reasoned: Reasoned): void {
    const answered = out;
    const waiting = next;
    out = null;
    next = null;
    if (outOf !== null && reasoned.trouble === null) known = { of: outOf, reasoned };
    if (answered !== null) settle(answered, reasoned);
    if (waiting !== null) send(waiting);
  }

  return {
    reason: (desk: readonly DeskEntry[]): Promise<Reasoned> =>
      new Promise((resolve) => {
        if (out === null) send({ desk, answers: [resolve] });
        else next = { desk, answers: [...(next?.answers ?? []), resolve] };
      }),
    /** Nobody answers any more. */
    close(): void {
      worker?.terminate();
      worker = null;
      for (const asked of [out, next]) if (asked !== null) settle(asked, NOTHING);
      out = null;
      next = null;
    },
  };
}

function isSame(a: Done, b: Done): boolean {
  return a.desk === b.desk && a.log === b.log && a.headS === b.headS;
}

function settle({ answers }: Asked, reasoned: Reasoned): void {
  for (const answer of answers) answer(reasoned);
}

function brokenOff(detail: string): Reasoned {
  return { ...NOTHING, trouble: 'reasoning broke off', detail };
}
