/** The page's hands, eyes and tools at the plant: asks the worker, keeps what it told last. */

import type { ToolUse } from '../../bench/index.ts';
import type { Action } from '../../engine/index.ts';
import { keyOf } from './meter-key.ts';
import type { Answer, AtThePlant, Facts } from './protocol.ts';
import type { AtThePlantState, Session } from './session-types.ts';
import { createStore } from './store.ts';
import type { Question, ToWorker } from './to-worker.ts';

interface Ways {
  send(message: ToWorker): void;
  perform(action: Action): void;
  facts(): Facts | null;
}
type Acts = Pick<
  Session,
  | 'atThePlant'
  | 'setMeters'
  | 'meterUses'
  | 'connect'
  | 'disconnect'
  | 'look'
  | 'listen'
  | 'smell'
  | 'setDesk'
  | 'proof'
  | 'judge'
>;
interface Waiting {
  resolve(answer: Answer): void;
  reject(error: Error): void;
}

export function createPlantSide({ send, perform, facts }: Ways) {
  const atThePlant = createStore<AtThePlantState>({
    bench: null,
    settings: [],
    meters: [],
    minutes: null,
  });
  const waiting = new Map<number, Waiting>();
  let asked = 0;
  let uses: readonly ToolUse[] = [];

  async function ask<Of extends Question['of']>(
    question: Extract<Question, { of: Of }>,
  ): Promise<Extract<Answer, { of: Of }>> {
    asked += 1;
    const number = asked;
    const answer = await new Promise<Answer>((resolve, reject) => {
      waiting.set(number, { resolve, reject });
      send({ type: 'ask', ask: number, question });
    });
    if (answer.of === question.of) return answer as Extract<Answer, { of: Of }>;
    throw new Error(answer.of === 'nothing' ? answer.why : `answer to another question`);
  }

  function setMeters(wanted: readonly ToolUse[]): void {
    uses = wanted.filter(
      (use, i) => wanted.findIndex((other) => keyOf(other) === keyOf(use)) === i,
    );
    send({ type: 'meters', uses: uses.map((use) => ({ ...use })) });
  }

  const acts: Acts = {
    atThePlant,
    setMeters,
    meterUses: () => uses,
    connect(use) {
      const set = withRange(use, facts());
      if (uses.some((other) => keyOf(other) === keyOf(set))) return;
      perform(checkOf(set));
      setMeters([...uses, set]);
    },
    disconnect(use) {
      const set = withRange(use, facts());
      setMeters(uses.filter((other) => keyOf(other) !== keyOf(set)));
    },
    look: async (what) => (await ask({ of: 'look', what })).reading,
    listen: async () => (await ask({ of: 'listen' })).heard,
    smell: async () => (await ask({ of: 'smell' })).share,
    setDesk: (desk) => send({ type: 'desk', entries: [...desk] }),
    proof: async (desk) => (await ask({ of: 'proof', desk: [...desk] })).proof,
    judge: async (desk) => (await ask({ of: 'judge', desk: [...desk] })).verdict,
  };

  return {
    acts,
    takeNews(news: AtThePlant): void {
      const { bench, settings, meters, minutes } = news;
      atThePlant.write({
        ...(bench === undefined ? {} : { bench }),
        ...(settings === undefined ? {} : { settings }),
        ...(meters === undefined ? {} : { meters }),
        ...(minutes === undefined ? {} : { minutes }),
      });
    },
    takeAnswer(number: number, answer: Answer): void {
      waiting.get(number)?.resolve(answer);
      waiting.delete(number);
    },
    /** Nobody answers any more. */
    close(): void {
      for (const { reject } of waiting.values()) reject(new Error('session closed'));
      waiting.clear();
    },
  };
}

/** A tool comes out of the bag set to the first of its ranges. */
function withRange(use: ToolUse, facts: Facts | null): ToolUse {
  const range = use.range ?? facts?.tools.find(({ id }) => id === use.tool)?.ranges[0]?.id;
  return range === undefined ? use : { ...use, range };
}

/** As the bench reads it out of a log. */
function checkOf({ tool, place, other = '', range = '' }: ToolUse): Action {
  return { type: 'check', what: range === '' ? tool : `${tool}: ${range}`, place, other };
}
