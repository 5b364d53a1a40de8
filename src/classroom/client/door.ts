/** The door of a class: coming in for the first time, and taking a seat on another device. */
import {
  ANSWERS,
  CLASS_PROTOCOL,
  type ClassError,
  GONE,
  type Seated,
  type ToServer,
} from '../protocol/index.ts';
import { takeWays, type Ways } from './ways.ts';

/** 'not reached': no server answered, or the page came from one that has no classes. */
export type AtTheDoor =
  | Extract<Seated, { readonly ok: true }>
  | { readonly ok: false; readonly error: ClassError | 'not reached' | 'seat taken elsewhere' };

const ANSWER_WITHIN_MS = 8000;

export function joinAtDoor(join: ToServer['join'], ways: Ways = {}): Promise<AtTheDoor> {
  return askAtDoor('join', join, ways);
}

export function takeSeat(take: ToServer['take seat'], ways: Ways = {}): Promise<AtTheDoor> {
  return askAtDoor('take seat', take, ways);
}

function askAtDoor(
  event: 'join' | 'take seat',
  data: ToServer['join'] | ToServer['take seat'],
  ways: Ways,
): Promise<AtTheDoor> {
  const { openWire, url } = takeWays(ways);
  return new Promise((done) => {
    const finish = (answer: AtTheDoor): void => {
      wire.close();
      done(answer);
    };
    const wire = openWire(
      url,
      { role: 'door', v: CLASS_PROTOCOL },
      {
        opened() {
          wire.ask(event, data, ANSWER_WITHIN_MS).then(
            (answer) => finish(readAnswer(event, answer)),
            () => finish(NOT_REACHED),
          );
        },
        message(said, what) {
          if (said === 'gone') finish(refusedBy((what as { why?: unknown } | null)?.why));
        },
        closed: (why) => finish(refusedBy(why)),
      },
    );
  });
}

const NOT_REACHED = { ok: false, error: 'not reached' } as const;

function refusedBy(why: unknown): AtTheDoor {
  const code = GONE.find((one) => one === why);
  if (code === undefined || code === 'class deleted') return NOT_REACHED;
  return { ok: false, error: code };
}

function readAnswer(event: 'join' | 'take seat', answer: unknown): AtTheDoor {
  const read = ANSWERS[event].safeParse(answer);
  if (!read.success) return { ok: false, error: 'other version' };
  return read.data.ok ? read.data : refusedBy(read.data.error);
}
