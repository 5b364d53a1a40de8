/** The branches that this device keeps, for the pages that make, list and compare them. */
import { type Branched, branchesOf, type Fork, makeBranch, sourceOf } from './branch-work.ts';
import { deviceShelf } from './shelf.ts';
import type { WorkRecord } from './work-record.ts';
import type { WorkEntry } from './work-types.ts';

export function branchWork(from: WorkRecord, fork: Fork): Branched {
  return makeBranch(deviceShelf, from, fork, nowISO());
}

export function listBranches(
  from: Pick<WorkRecord, 'kind' | 'id' | 'startedISO'>,
): readonly WorkEntry[] {
  return branchesOf(deviceShelf, from, nowISO());
}

export function workBranched(branch: WorkRecord): WorkRecord | null {
  return sourceOf(deviceShelf, branch, nowISO());
}

function nowISO(): string {
  return new Date().toISOString();
}
