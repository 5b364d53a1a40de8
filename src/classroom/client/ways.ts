import { openSocketWire } from './socket-wire.ts';
import type { OpenWire } from './wire.ts';

/** Where a page keeps what must outlive it. */
export interface SmallShelf {
  get(key: string): string | null;
  set(key: string, text: string): void;
  remove(key: string): void;
}

/** How a client reaches its server, and what it takes from the place where it runs. */
export interface Ways {
  /** Of the server; left out: the one that the page came from. */
  readonly url?: string;
  readonly shelf?: SmallShelf;
  /** Calls back whenever the device may have been away for a while; gives back how to stop that. */
  readonly wake?: (again: () => void) => () => void;
  readonly openWire?: OpenWire;
  readonly now?: () => number;
  /** 0 to below 1. */
  readonly random?: () => number;
}

export interface WaysTaken {
  readonly url: string | undefined;
  readonly shelf: SmallShelf | null;
  readonly wake: (again: () => void) => () => void;
  readonly openWire: OpenWire;
  readonly now: () => number;
  readonly random: () => number;
}

export function takeWays(ways: Ways): WaysTaken {
  return {
    url: ways.url,
    shelf: ways.shelf ?? null,
    wake: ways.wake ?? (() => () => undefined),
    openWire: ways.openWire ?? openSocketWire,
    now: ways.now ?? Date.now,
    random: ways.random ?? Math.random,
  };
}
