/** The whole behaviour of the worker that reasons, but for the worker itself, so that it can be tried without a browser. */
import type { Reasoner } from '../../judging/reasoning/index.ts';
import type { ExerciseCase } from '../../judging/work/index.ts';
import type { FromReasoner, Reasoned } from './reasoning-protocol.ts';
import { type ToReasoner, toReasonerSchema } from './to-reasoner.ts';

export interface ReasonPorts {
  post(message: FromReasoner): void;
  /** Null where there is nothing to find out. */
  openCase(
    kind: ToReasoner['kind'],
    id: string,
    choices: Pick<ToReasoner, 'given' | 'seed'>,
  ): ExerciseCase | null;
  /** Null where the plant has no atlas; throws where it cannot be fetched. */
  loadAtlas(folder: string, plant: string): Promise<string | null>;
  /** Throws where the text is no atlas. */
  createReasoner(atlas: string, exercise: ExerciseCase): Reasoner;
}

export interface ReasonHost {
  /** Settled when the answer is posted. */
  receive(message: unknown): Promise<void>;
}

export function createReasonHost(ports: ReasonPorts): ReasonHost {
  const known = new Map<string, Reasoner | null>();
  const atlases = new Map<string, string | null>();

  async function answer(message: ToReasoner): Promise<Reasoned> {
    const { kind, id, given, seed, log, desk, untilS, atlases: folder } = message;
    const upTo = { log: log.length, desk: desk.length };
    const nothing = { reasoning: null, trouble: null, detail: '', upTo };
    const name = `${kind}/${id}`;
    if (!known.has(name)) {
      const exercise = ports.openCase(kind, id, { given, seed });
      if (exercise === null) return nothing;
      let atlas: string | null;
      try {
        atlas = await atlasOf(folder, exercise.plant);
      } catch (error) {
        return { ...nothing, trouble: 'atlas not loaded', detail: messageOf(error) };
      }
      known.set(name, atlas === null ? null : ports.createReasoner(atlas, exercise));
    }
    const reasoner = known.get(name) ?? null;
    if (reasoner === null) return nothing;
    return { ...nothing, reasoning: reasoner.reason(log, desk, untilS) };
  }

  /** Only what was fetched is remembered: what failed may succeed the next time. */
  async function atlasOf(folder: string, plant: string): Promise<string | null> {
    const kept = atlases.get(plant);
    if (kept !== undefined) return kept;
    const fetched = await ports.loadAtlas(folder, plant);
    atlases.set(plant, fetched);
    return fetched;
  }

  return {
    async receive(message) {
      const parsed = toReasonerSchema.safeParse(message);
      const ask = parsed.success ? parsed.data.ask : askOf(message);
      let reasoned: Reasoned;
      try {
        if (!parsed.success) throw parsed.error;
        reasoned = await answer(parsed.data);
      } catch (error) {
        const detail = messageOf(error);
        const upTo = { log: 0, desk: 0 };
        reasoned = { reasoning: null, trouble: 'reasoning broke off', detail, upTo };
      }
      ports.post({ type: 'reasoned', ask, ...reasoned });
    },
  };
}

function askOf(message: unknown): number {
  const ask = (message as { readonly ask?: unknown } | null)?.ask;
  return typeof ask === 'number' ? ask : 0;
}

function messageOf(error: unknown): string {
  return error instanceof Error ? error.message : String(error);
}
