import type { Hello } from '../protocol/index.ts';

/** One connection, from its opening to its end; another try is another wire. */
export interface Wire {
  /** @throws (rejects) when no answer came in time or the wire is closed */
  ask(event: string, data: unknown, withinMs: number): Promise<unknown>;
  /** May be lost. */
  tell(event: string, data: unknown): void;
  /** Nothing more is heard of it. */
  close(): void;
}

export interface WireEnd {
  opened(): void;
  message(event: string, data: unknown): void;
  /** @param why what the server said of it, where it said something */
  closed(why: string): void;
}

/** Begins to connect; the end given hears what becomes of it, never before this has returned. */
export type OpenWire = (url: string | undefined, hello: Hello, end: WireEnd) => Wire;
