import type { Head, WorkRecord } from '../../classroom/index.ts';
import type { TimedAction } from '../../engine/index.ts';
import type { Told } from '../session/told.ts';

/** Where the one plant has come to: what was done by the work, how far and how fast by the head. */
export function toldOfHead(work: WorkRecord, head: Head | null): Told {
  const log = work.acts as TimedAction[];
  const rests = head !== null && head.attempt === work.attempt && head.acts === log.length;
  if (!rests) return { log, headS: work.headS, hash: work.hash, mode: 'paused', speed: 1 };
  const { headS, hash, mode, speed } = head;
  return { log, headS, hash, mode, speed };
}
