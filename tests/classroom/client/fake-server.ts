import type { ClassEntry, ClassEvent } from '../../../machines/class/index.ts';
import type { OpenWire, WireEnd } from '../../../src/classroom/client/index.ts';
import {
  CLASS_PROTOCOL,
  type Head,
  type Hello,
  type Spoken,
  type WorkDelta,
  type WorkRecord,
  withDelta,
} from '../../../src/classroom/index.ts';

interface FakeWire {
  readonly hello: Hello;
  readonly end: WireEnd;
  open: boolean;
}

/** One class on a server in this very process, with a network that can be told to fail. */
export interface FakeServer {
  readonly openWire: OpenWire;
  readonly entries: ClassEntry[];
  work: WorkRecord | null;
  head: Head | null;
  handedIn: { attempt: number; rev: number }[];
  polled: number[];
  /** Nobody gets in. */
  isDown: boolean;
  /** What is said next reaches the server, and its answer nobody. */
  losesAnswers: boolean;
  /** What is asked next never reaches the server. */
  losesQuestions: boolean;
  /** How long what is asked is on its way, ms. */
  travelMs: number;
  /** Refuses to save until it is null again. */
  cannotSave: boolean;
  /** Why no one is let in; null: everyone is. */
  refuses: string | null;
  /** Tries to connect, as they came. */
  readonly hellos: Hello[];
  readonly said: { key: string; n: number }[];
  readonly deltas: WorkDelta[];
  add(event: ClassEvent): ClassEntry;
  /** Tells every connection, as often as it is called. */
  send(event: string, data: unknown): void;
  drop(): void;
}

const OPENING: ClassEvent = {
  type: 'open',
  what: { kind: 'job', id: 'a job', title: 'A job', plant: 'a plant' },
  way: 'own copies',
  seed: 7,
};

export function createFakeServer(): FakeServer {
  let wires: FakeWire[] = [];
  const keys = new Map<string, number>();
  const server: FakeServer = {
    entries: [],
    work: null,
    head: null,
    handedIn: [],
    polled: [],
    isDown: false,
    losesAnswers: false,
    losesQuestions: false,
    travelMs: 5,
    cannotSave: false,
    refuses: null,
    hellos: [],
    said: [],
    deltas: [],
    add(event) {
      const entry = { n: server.entries.length + 1, atMs: 1000, ...event } as ClassEntry;
      server.entries.push(entry);
      return entry;
    },
    send(event, data) {
      for (const wire of wires) if (wire.open) wire.end.message(event, data);
    },
    drop() {
      const before = wires;
      wires = [];
      for (const wire of before) {
        if (!wire.open) continue;
        wire.open = false;
        wire.end.closed('');
      }
    },
    openWire(_url, hello, end) {
      server.hellos.push(hello);
      const wire: FakeWire = { hello, end, open: true };
      wires.push(wire);
      setTimeout(() => letIn(wire), 5);
      return {
        ask: (event, data, withinMs) => ask(wire, event, structuredClone(data), withinMs),
        tell: () => undefined,
        close() {
          wire.open = false;
        },
      };
    },
  };

  function letIn(wire: FakeWire): void {
    if (!wire.open) return;
    if (server.isDown || server.refuses !== null) {
      wire.open = false;
      wire.end.closed(server.refuses ?? 'websocket error');
      return;
    }
    wire.end.opened();
    const { hello } = wire;
    if (hello.role === 'door') return;
    wire.end.message('welcome', {
      v: CLASS_PROTOCOL,
      role: hello.role,
      class: 'class-of-eight',
      code: 'ACDEFH',
      addresses: [],
      serverMs: Date.now() + 5000,
      entries: structuredClone(server.entries.slice(hello.since)),
      n: server.entries.length,
      seat: hello.role === 'seat' ? hello.seat : null,
      nickname: hello.role === 'seat' ? 'Kim' : null,
      work: structuredClone(server.work),
      head: structuredClone(server.head),
      polled: server.polled.at(-1) ?? null,
    });
  }

  function ask(wire: FakeWire, event: string, data: unknown, withinMs: number): Promise<unknown> {
    return new Promise((answered, failed) => {
      setTimeout(() => failed(new Error('no answer in time')), withinMs);
      if (!wire.open || server.losesQuestions) return;
      setTimeout(() => {
        // It is on its way, whatever becomes of the line.
        const answer = structuredClone(answerTo(event, data));
        if (server.losesAnswers) return;
        setTimeout(() => {
          if (wire.open) answered(answer);
        }, 5);
      }, server.travelMs);
    });
  }

  function answerTo(event: string, data: unknown): unknown {
    switch (event) {
      case 'say': {
        const { key, entry } = data as { key: string; entry: Spoken };
        const n = keys.get(key) ?? server.add(entry).n;
        keys.set(key, n);
        server.said.push({ key, n });
        server.send('entry', server.entries[n - 1]);
        return { ok: true, n };
      }
      case 'since': {
        const { n } = data as { n: number };
        return { ok: true, entries: server.entries.slice(n) };
      }
      case 'work':
        return saveWork(data as WorkDelta);
      case 'watch':
        return { ok: true, work: server.work };
      case 'poll answer':
        server.polled.push((data as { option: number }).option);
        return { ok: true };
      case 'hand in': {
        const { attempt, rev } = data as { attempt: number; rev: number };
        server.handedIn.push({ attempt, rev });
        return { ok: true };
      }
      case 'join':
      case 'take seat':
        return {
          ok: true,
          class: 'class-of-eight',
          seat: 3,
          token: 'a token of this very seat',
          pin: '4711',
          nickname: 'Kim',
        };
      default:
        throw new Error(`the fake server knows nothing of ${event}`);
    }
  }

  function saveWork(delta: WorkDelta): unknown {
    if (server.cannotSave) return { ok: false, error: 'cannot be saved now' };
    server.deltas.push(delta);
    const taken = withDelta(server.work, delta);
    if (!taken.ok) {
      return { ok: false, error: 'tell more', haveActs: taken.haveActs, haveDesk: taken.haveDesk };
    }
    server.work = taken.record;
    return { ok: true, attempt: taken.record.attempt, rev: taken.record.rev };
  }

  server.add(OPENING);
  return server;
}
