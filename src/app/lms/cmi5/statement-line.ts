/** Statements one after the other: the next goes when the one before has been taken. */
import { type StoreFailure, storeFailure } from './record-store.ts';

interface Waiting {
  readonly statement: object;
  readonly done: (taken: boolean) => void;
}

export interface StatementLine {
  /** @returns whether it was taken, once that is known */
  say(statement: object): Promise<boolean>;
  /** The last of all: goes at once, together with those that still wait. */
  sayLast(statement: object): void;
}

const AGAIN_MS = [2000, 5000, 15_000, 60_000] as const;

/**
 * @param send takes several at once
 * @param tell null when one was taken
 */
export function statementLine(
  send: (statements: readonly object[]) => Promise<void>,
  tell: (failure: StoreFailure | null) => void,
  later: (act: () => void, ms: number) => void,
): StatementLine {
  const waiting: Waiting[] = [];
  let underWay: Waiting | null = null;
  let failures = 0;
  let over = false;

  function goOn(): void {
    const first = waiting[0];
    if (over || underWay !== null || first === undefined) return;
    underWay = first;
    send([first.statement]).then(
      () => settle(first, true),
      (error: unknown) => fail(first, error),
    );
  }
  function settle(one: Waiting, taken: boolean): void {
    underWay = null;
    failures = 0;
    if (waiting[0] === one) waiting.shift();
    one.done(taken);
    if (taken) tell(null);
    goOn();
  }
  function fail(one: Waiting, error: unknown): void {
    const failure = storeFailure(error);
    tell(failure);
    if (failure.trouble !== 'not reached') {
      settle(one, false);
      return;
    }
    underWay = null;
    const ms = AGAIN_MS[Math.min(failures, AGAIN_MS.length - 1)] ?? 0;
    failures += 1;
    later(goOn, ms);
  }

  return {
    say(statement) {
      return new Promise((done) => {
        waiting.push({ statement, done });
        goOn();
      });
    },
    sayLast(statement) {
      if (over) return;
      over = true;
      const left = waiting.filter((one) => one !== underWay).map((one) => one.statement);
      // Nobody is there any more to hear of a failure.
      send([...left, statement]).catch(() => undefined);
    },
  };
}
