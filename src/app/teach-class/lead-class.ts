/** The one plant of a class: what its run comes to is told, so that everyone's device can follow. */
import type { Head, WorkRecord } from '../../classroom/index.ts';
import type { Told } from '../session/told.ts';

/** While only time goes on, the work is told so seldom; the head is told all the time. */
export const WORK_EVERY_MS = 5000;

export interface LeadBase {
  readonly attempt: number;
  readonly startedMs: number;
  readonly setupHash: string;
}

interface TellsClass {
  tellWork(work: Omit<WorkRecord, 'rev'>): void;
  tellHead(head: Omit<Head, 'rev'>): void;
}

/** @returns what takes each thing that the run tells of itself */
export function leadClass(
  client: TellsClass,
  base: LeadBase,
  nowMs: () => number,
): (told: Told) => void {
  let last: Told | null = null;
  let toldMs = Number.NEGATIVE_INFINITY;
  return (told) => {
    const { log, headS, hash, mode, speed } = told;
    const isNews =
      last === null ||
      log !== last.log ||
      mode !== last.mode ||
      speed !== last.speed ||
      headS < last.headS;
    if (isNews || nowMs() - toldMs >= WORK_EVERY_MS) {
      toldMs = nowMs();
      client.tellWork({ ...base, headS, hash, applied: 0, acts: [...log], desk: [] });
    }
    last = told;
    client.tellHead({ attempt: base.attempt, acts: log.length, headS, hash, mode, speed });
  };
}
