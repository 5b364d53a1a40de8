/** The page's end of making items: one at a time, what someone waits for before what is made ahead. */
import { fromMakerSchema, type ItemAnswer } from './making-protocol.ts';
import type { WorkerLike } from './session-types.ts';
import type { ToMaker } from './to-maker.ts';

export interface MakerWays {
  /** In its own thread: making and proving takes longer than a picture may. */
  startWorker(): WorkerLike<ToMaker>;
  /** Address of the folder of the atlases. */
  readonly atlases: string;
}

export interface ItemSide {
  /** The same id gives the same answer, but for trouble that may have passed. */
  ask(id: string): Promise<ItemAnswer>;
  /** Made when nothing else is asked for. */
  prepare(id: string): void;
  /** An item that is made already. */
  known(id: string): ItemAnswer | null;
  /** Ends the worker; what is made stays, and the next question starts another one. */
  rest(): void;
}

interface Wanted {
  readonly id: string;
  readonly answers: ((answer: ItemAnswer) => void)[];
}

/** Whether asking again may give another answer. */
const PASSING: ReadonlySet<string> = new Set(['atlas not loaded', 'making broke off']);

export function createItemSide(ways: MakerWays): ItemSide {
  const kept = new Map<string, ItemAnswer>();
  let worker: WorkerLike<ToMaker> | null = null;
  let number = 0;
  let out: Wanted | null = null;
  let urgent: Wanted[] = [];
  let ahead: Wanted[] = [];

  function next(): void {
    if (out !== null) return;
    out = urgent.shift() ?? ahead.shift() ?? null;
    if (out === null) return;
    worker ??= start();
    number += 1;
    worker.postMessage({ type: 'make item', ask: number, id: out.id, atlases: ways.atlases });
  }

  function start(): WorkerLike<ToMaker> {
    const started = ways.startWorker();
    started.onmessage = (event) => {
      const parsed = fromMakerSchema.safeParse(event.data);
      if (!parsed.success) {
        come(brokenOff(parsed.error.message));
        return;
      }
      const { type: _, ask, ...answer } = parsed.data;
      if (ask === number) come(answer);
    };
    started.onerror = (event) => {
      started.terminate();
      worker = null;
      come(brokenOff(event.message ?? ''));
    };
    return started;
  }

  function come(answer: ItemAnswer): void {
    const answered = out;
    out = null;
    if (answered === null) return;
    if (answer.ok || !PASSING.has(answer.trouble)) kept.set(answered.id, answer);
    for (const tell of answered.answers) tell(answer);
    next();
  }

  function isWanted(id: string): boolean {
    return kept.has(id) || [out, ...urgent, ...ahead].some((wanted) => wanted?.id === id);
  }

  return {
    known: (id) => kept.get(id) ?? null,
    ask: (id) =>
      new Promise((resolve) => {
        const known = kept.get(id);
        if (known !== undefined) {
          resolve(known);
          return;
        }
        const wanted = [out, ...urgent].find((one) => one?.id === id);
        if (wanted != null) wanted.answers.push(resolve);
        else {
          const early = ahead.find((one) => one.id === id);
          ahead = ahead.filter((one) => one !== early);
          urgent.push({ id, answers: [...(early?.answers ?? []), resolve] });
        }
        next();
      }),
    prepare(id) {
      if (isWanted(id)) return;
      ahead.push({ id, answers: [] });
      next();
    },
    rest() {
      worker?.terminate();
      worker = null;
      const left = [out, ...urgent, ...ahead];
      out = null;
      urgent = [];
      ahead = [];
      for (const wanted of left) {
        for (const tell of wanted?.answers ?? []) tell(brokenOff('closed'));
      }
    },
  };
}

function brokenOff(detail: string): ItemAnswer {
  return { ok: false, trouble: 'making broke off', detail };
}
