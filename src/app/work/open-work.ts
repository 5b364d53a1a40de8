/** One piece of work between the shelf and the running session: what is saved, when, and how it comes back. */
import type { DeskEntry } from '../../../machines/job/index.ts';
import { keyOf } from '../session/meter-key.ts';
import type { Failure } from '../session/protocol.ts';
import type { SavedRun, Session, SessionOpening } from '../session/session-types.ts';
import { createStore } from '../session/store.ts';
import { usesThen } from './branch-work.ts';
import { eraseKept, keyOfWork, putAside, readKept, writeKept } from './keep-work.ts';
import type { Shelf } from './shelf.ts';
import {
  type OfClass,
  WORK_VERSION,
  type WorkIssue,
  type WorkName,
  type WorkRecord,
} from './work-record.ts';
import type { Work, WorkState } from './work-types.ts';

/** No more of the plant's time than this is lost when the page is killed. */
const SAVE_EVERY_S = 2;

export function openWork(shelf: Shelf, nowISO: () => string, name: WorkName): Work {
  const kept = readKept(shelf, name, nowISO());
  const state = createStore<WorkState>({
    record: kept.record,
    desk: kept.record?.desk ?? [],
    issue: kept.issue,
    resumed: kept.record !== null,
    attempt: 0,
  });
  const { kind, id } = name;
  /** A branch is made of other work, never from nothing. */
  const mayBegin = name.branch === undefined || kept.record !== null;
  /** Work of a newer version, or of another page that has it open, must not be written over. */
  let mayWrite = mayBegin && kept.issue?.trouble !== 'newer version';
  let whateverChanged = false;
  let session: Session | null = null;
  let current: SavedRun | null = null;
  let unsaved: SavedRun | null = null;
  let usesSaved = '';
  let ofClass = kept.record?.ofClass ?? NOT_OF_CLASS;
  /** Ordered, and not done by the run yet: till then nothing is saved that would be half of it. */
  let cutting: Cutting | null = null;
  /** How the run opened: until something is done it is not worth keeping. */
  let opened: SavedRun | null = null;

  function write(change: Partial<WorkRecord>): void {
    const record = {
      ...(state.read().record ?? newRecord()),
      ...change,
      ...(ofClass === NOT_OF_CLASS ? {} : { ofClass }),
      savedISO: nowISO(),
    };
    const issue = mayWrite ? writeKept(shelf, record) : null;
    const before = state.read().issue;
    const stillFull = issue !== null && before?.trouble === issue.trouble;
    state.write({ record, ...(issue === null || stillFull ? {} : { issue }) });
    if (issue === null && isOfWriting(before)) state.write({ issue: null });
  }

  function newRecord(): WorkRecord {
    const atISO = nowISO();
    return {
      v: WORK_VERSION,
      kind,
      id,
      seed: 0,
      startedISO: atISO,
      savedISO: atISO,
      log: [],
      pending: [],
      desk: [...state.read().desk],
      headS: 0,
      hash: null,
      setupHash: NOT_OPENED,
      uses: [],
    };
  }

  function noteRun(saved: SavedRun): void {
    if (session === null) return;
    opened ??= saved;
    current = saved;
    if (cutting !== null) {
      if (cutting.isThere(saved)) finishCut(cutting, saved);
      return;
    }
    const { record } = state.read();
    if (record === null && isUntouched(saved, opened)) return;
    unsaved = saved;
    const uses = usesKey(session);
    const acted =
      record === null ||
      record.setupHash === NOT_OPENED ||
      saved.log !== record.log ||
      saved.pending.length !== record.pending.length ||
      uses !== usesSaved;
    const sinceS = record === null ? 0 : Math.abs(saved.headS - record.headS);
    const rests = session.store.read().status?.mode === 'paused' && sinceS > 0;
    if (acted || rests || sinceS >= SAVE_EVERY_S) writeRun(saved);
  }

  /** Looking at an exercise is no work yet. */
  function isUntouched({ log, pending, headS }: SavedRun, atFirst: SavedRun): boolean {
    return (
      log.length === atFirst.log.length &&
      pending.length === 0 &&
      headS - atFirst.headS < SAVE_EVERY_S &&
      session?.meterUses().length === 0
    );
  }

  function writeRun(saved: SavedRun, change: Partial<WorkRecord> = {}): void {
    const facts = session?.store.read().facts;
    if (session === null || facts == null) return;
    unsaved = null;
    usesSaved = usesKey(session);
    const { log, pending, headS, hash } = saved;
    const { seed, setupHash } = facts.work;
    const uses = [...session.meterUses()];
    write({ log, pending, headS, hash, seed, setupHash, uses, ...change });
  }

  function saveNow(): void {
    if (unsaved !== null && cutting === null) writeRun(unsaved);
  }

  function cutTo(tS: number): Promise<void> {
    const of = session;
    const arriveS = of?.store.read().facts?.arriveS;
    if (of === null || arriveS === undefined || cutting !== null) return Promise.resolve();
    const toS = Math.max(arriveS, tS);
    const desk =
      kind === 'lesson' ? state.read().desk : deskBefore(state.read().desk, toS, arriveS);
    return new Promise((settled) => {
      const before = current;
      const isThere = (saved: SavedRun) => saved !== before && saved.headS <= toS + SAME_S;
      cutting = { desk, toS, isThere, settled };
      of.cutTo(toS);
    });
  }

  function finishCut({ desk, toS, settled }: Cutting, saved: SavedRun): void {
    cutting = null;
    state.write({ desk });
    // Log, paper and what the class has done go to the shelf in one piece.
    writeRun(saved, { desk: [...desk] });
    session?.setMeters(usesThen({ log: saved.log, uses: [...session.meterUses()] }, toS));
    session?.setDesk(desk);
    settled();
  }

  function opening(): SessionOpening {
    const { record } = state.read();
    if (record === null || record.setupHash === NOT_OPENED) return { kind, id };
    const { log, pending, headS, hash, setupHash } = record;
    const checks = whateverChanged ? {} : { setupHash, ...(hash === null ? {} : { hash }) };
    return { kind, id, log: [...log], pending: [...pending], untilS: headS, ...checks };
  }

  function attach(started: Session): () => void {
    session = started;
    let known = false;
    const watch = (): void => {
      const { phase, failure } = started.store.read();
      const trouble = phase === 'failed' && failure !== null ? troubleOf(failure.failure) : null;
      if (trouble !== null && state.read().issue?.trouble !== trouble) {
        state.write({ issue: { trouble, name, detail: failure?.detail ?? '' } });
      }
      if (known || phase !== 'open') return;
      known = true;
      const { record, desk } = state.read();
      usesSaved = JSON.stringify((record?.uses ?? []).map(keyOf));
      if (record !== null && record.uses.length > 0) started.setMeters(record.uses);
      started.setDesk(desk);
    };
    const stopWatching = started.store.subscribe(watch);
    watch();
    const stopListening = started.onLog(noteRun);
    return () => {
      saveNow();
      stopListening();
      stopWatching();
      if (session !== started) return;
      session = null;
      current = null;
      cutting?.settled();
      cutting = null;
    };
  }

  return {
    name,
    state,
    get ofClass() {
      return ofClass;
    },
    noteClass(done) {
      ofClass = done;
    },
    cutTo,
    opening,
    attach,
    putDesk(desk: readonly DeskEntry[]) {
      // It would be cut off again.
      if (cutting !== null) return;
      state.write({ desk });
      if (current === null) write({ desk: [...desk] });
      else writeRun(current, { desk: [...desk] });
      session?.setDesk(desk);
    },
    startAnew() {
      saveNow();
      const detail = state.read().issue?.trouble ?? '';
      const issue = putAside(shelf, name, 'started anew', detail, nowISO());
      if (issue !== null) {
        state.write({ issue });
        return;
      }
      session = null;
      unsaved = null;
      opened = null;
      current = null;
      mayWrite = name.branch === undefined;
      whateverChanged = false;
      if (ofClass !== NOT_OF_CLASS) ofClass = { ...ofClass, ordered: [] };
      const { attempt } = state.read();
      state.write({ record: null, desk: [], issue: null, resumed: false, attempt: attempt + 1 });
    },
    goOnAnyway() {
      whateverChanged = true;
      state.write({ issue: null, attempt: state.read().attempt + 1 });
    },
    saveNow,
    erase() {
      mayWrite = false;
      eraseKept(shelf, name);
    },
    /** Another page of the same device has written this work: it is theirs now. */
    yieldTo(key) {
      if (key !== keyOfWork(name) || !mayWrite) return;
      mayWrite = false;
      state.write({ issue: { trouble: 'open elsewhere', name, detail: '' } });
    },
    dismissIssue: () => state.write({ issue: null }),
  };
}

interface Cutting {
  readonly desk: readonly DeskEntry[];
  readonly toS: number;
  isThere(saved: SavedRun): boolean;
  settled(): void;
}

const NOT_OF_CLASS: OfClass = { applied: 0, ordered: [] };
/** Less than a frame apart is the same moment. */
const SAME_S = 0.05;

/** What stood on paper then; at the moment of coming, that one has come. */
function deskBefore(desk: readonly DeskEntry[], tS: number, arriveS: number): DeskEntry[] {
  return desk.filter(
    ({ t, type }) => t < tS - 1e-9 || (t <= arriveS && (type === 'arrive' || type === 'begin')),
  );
}

/** In place of a setup's hash while no run has been opened yet. */
const NOT_OPENED = '';

/** Why saved work did not open; null where it is not the work's own fault. */
function troubleOf(failure: Failure): WorkIssue['trouble'] | null {
  if (failure === 'exercise changed') return 'exercise changed';
  return failure === 'message not understood' ? 'broken' : null;
}

function usesKey(session: Session): string {
  return JSON.stringify(session.meterUses().map(keyOf));
}

function isOfWriting(issue: WorkIssue | null): boolean {
  return issue?.trouble === 'no room' || issue?.trouble === 'storage refused';
}
