import { statfsSync } from 'node:fs';
import type { Statement } from '../types.ts';

const READS = /^\s*select\b/i;
const DELETES = /^\s*delete\b/i;
/** Deleting makes room, and needs a little of it before. */
const SHARE_FOR_DELETING = 0.25;

/**
 * Whether the disk has room for these. Asked before the engine is, for a write that does not fit
 * breaks the engine off.
 */
export function hasRoomFor(
  statements: readonly Statement[],
  folder: string,
  spareBytes: number,
): boolean {
  const writes = statements.filter(({ sql }) => !READS.test(sql));
  if (writes.length === 0) return true;
  const onlyDeletes = writes.every(({ sql }) => DELETES.test(sql));
  return freeBytes(folder) >= spareBytes * (onlyDeletes ? SHARE_FOR_DELETING : 1);
}

function freeBytes(folder: string): number {
  try {
    const { bavail, bsize } = statfsSync(folder);
    return bavail * bsize;
  } catch {
    // A file system that does not say: then it shows when it is full.
    return Number.POSITIVE_INFINITY;
  }
}
