/**
 * What a class says is done to a seat's own run: each entry once and in order, over reloads and gaps.
 * How far it has come is saved with the work itself, in one piece with what it did.
 */
import {
  type ClassAct,
  type ClassEntry,
  foldClass,
  isFor,
  paceOfSeat,
} from '../../../machines/class/index.ts';
import type { Action } from '../../engine/index.ts';
import type { Session } from '../session/session-types.ts';
import type { OfClass } from '../work/work-record.ts';
import type { Work } from '../work/work-types.ts';
import { createTriggers } from './triggers.ts';

export interface Commands {
  /** All entries of the class from the first on, as far as they are known; again whenever there are more. */
  take(entries: readonly ClassEntry[]): void;
  stop(): void;
}

export interface CommandsOf {
  readonly work: Work;
  readonly session: Session;
  readonly seat: number;
  /** Called when an entry is done, with its number. */
  onApplied?(n: number): void;
}

/**
 * Attached to a run as soon as it is made; what comes before it is open waits. What the class did
 * to the run before is in its log already: only its pace is set anew.
 */
export function takeCommands({ work, session, seat, onApplied }: CommandsOf): Commands {
  let entries: readonly ClassEntry[] = [];
  let busy = false;
  let stopped = false;
  let begun = false;
  const triggers = createTriggers(session, { order });

  const unsubscribe = session.store.subscribe(goOn);

  function take(all: readonly ClassEntry[]): void {
    entries = all;
    goOn();
  }

  function goOn(): void {
    if (stopped || busy || entries.length === 0) return;
    if (session.store.read().phase !== 'open') return;
    // What is done below tells the store, which would come here again.
    busy = true;
    try {
      if (!begun) begin();
      for (let next = nextEntry(); next !== null; next = nextEntry()) {
        const waits = apply(next);
        if (waits === null) continue;
        waits.then(() => {
          busy = false;
          goOn();
        });
        return;
      }
      triggers.look();
    } finally {
      if (!isWaiting) busy = false;
    }
  }

  /** Set while the run is being cut. */
  let isWaiting = false;

  function begin(): void {
    begun = true;
    triggers.startFrom(work.state.read().record?.headS ?? session.headS());
    const { applied } = work.ofClass;
    const known = entries.filter(({ n }) => n <= applied);
    if (known.length > 0) setPace(known);
    else session.freeze(true);
    triggers.set(known, seat, work.ofClass);
  }

  /** The one after the last that is in the work; null where it is not there yet. */
  function nextEntry(): ClassEntry | null {
    const { applied } = work.ofClass;
    return entries.find(({ n }) => n === applied + 1) ?? null;
  }

  /** @returns what is to be waited for before the next one */
  function apply(entry: ClassEntry): Promise<void> | null {
    const known = entries.filter(({ n }) => n <= entry.n);
    const taken = isTaken(known);
    const mine = taken && (!('to' in entry) || isFor(entry.to, seat));
    if (mine && (entry.type === 'rewind' || entry.type === 'rewind by')) {
      const headS = session.headS();
      const tS = Math.max(0, entry.type === 'rewind' ? entry.toS : headS - entry.byS);
      session.freeze(true);
      note(entry.n, { cutS: tS });
      isWaiting = true;
      return work.cutTo(tS).then(() => {
        isWaiting = false;
        triggers.startFrom(Math.min(tS, headS));
        triggers.set(known, seat, work.ofClass);
        onApplied?.(entry.n);
      });
    }
    if (mine) {
      switch (entry.type) {
        case 'begin':
        case 'freeze':
        case 'run':
        case 'close':
          setPace(known);
          break;
        case 'next step':
          session.freeze(true);
          if (mayRun(work)) session.order('next step');
          break;
        case 'do':
          orderAll(entry.n, entry.acts);
          break;
        case 'lock tools':
          takeOff(session, entry.tools);
          break;
        default:
          break;
      }
    }
    note(entry.n);
    triggers.set(known, seat, work.ofClass);
    onApplied?.(entry.n);
    return null;
  }

  function setPace(known: readonly ClassEntry[]): void {
    const book = foldClass(known);
    const { frozen, speed } = paceOfSeat(book, seat);
    // Once the class is over the run is the learner's own.
    session.freeze(book.phase === 'under way' ? frozen : book.phase !== 'closed');
    // A visit begins when the learner comes; till then nothing at the plant moves.
    const isRunSaid = known.some((entry) => entry.type === 'run' && isFor(entry.to, seat));
    const runs = isRunSaid || work.name.kind === 'watch';
    if (!frozen && book.phase === 'under way' && runs && mayRun(work)) session.play(speed);
  }

  /** Those that are in the work already, from before a reload, are not done again. */
  function orderAll(n: number, acts: readonly ClassAct[]): void {
    const done = work.ofClass.ordered.filter((one) => one.n === n).length;
    acts.slice(done).forEach((act, place) => {
      order(n, done + place, act);
    });
  }

  /** Noted before it is done: what saves the act saves that it was ordered. */
  function order(n: number, place: number, act: ClassAct): void {
    const { applied, ordered } = work.ofClass;
    const one = { n, act: place, atS: session.headS() };
    work.noteClass({ applied, ordered: [...ordered, one] });
    // The worker checks it by the engine's tables.
    session.order(act as unknown as Action);
  }

  function note(n: number, { cutS }: { readonly cutS?: number } = {}): void {
    const { ordered } = work.ofClass;
    const kept: OfClass['ordered'] =
      cutS === undefined ? ordered : ordered.filter(({ atS }) => atS < cutS);
    work.noteClass({ applied: n, ordered: kept });
  }

  return {
    take,
    stop() {
      stopped = true;
      unsubscribe();
      triggers.stop();
    },
  };
}

/** The chart refuses what does not fit; such an entry changes nothing here either. */
function isTaken(known: readonly ClassEntry[]): boolean {
  const last = known.at(-1);
  return last !== undefined && foldClass(known).n === last.n;
}

/** At a job and a drill the plant stands still until the learner is there. */
function mayRun(work: Work): boolean {
  const { kind } = work.name;
  if (kind === 'watch' || kind === 'lesson') return true;
  const begins = kind === 'job' ? 'arrive' : 'begin';
  return work.state.read().desk.some(({ type }) => type === begins);
}

function takeOff(session: Session, locked: readonly string[]): void {
  const uses = session.meterUses();
  const left = uses.filter(({ tool }) => !locked.includes(tool));
  if (left.length < uses.length) session.setMeters(left);
}
