import type { WorkAct, WorkRecord } from '../../../src/classroom/index.ts';
import type { KeptClass, KeptSeat } from '../../../src/server/store/index.ts';

export const OPENED_MS = 1_700_000_000_000;
export const DAY_MS = 86_400_000;

let count = 0;

/** Another class each time. */
export function someClass(
  change: Partial<Omit<KeptClass, 'n' | 'closedMs'>> = {},
): Omit<KeptClass, 'n' | 'closedMs'> {
  count++;
  return {
    id: `class-${count}`,
    code: `CODE${String(count).padStart(2, '0')}`,
    secretHash: 'hash of the secret',
    projectorHash: 'hash of the key',
    what: { kind: 'job', id: 'burner-silent', title: 'Silent burner', plant: 'dairy' },
    way: 'own copies',
    seed: 2 ** 31 - 1,
    openedMs: OPENED_MS,
    retentionDays: 90,
    ...change,
  };
}

export function someSeat(nickname: string): Omit<KeptSeat, 'seat' | 'handedInMs'> {
  return { nickname, tokenHash: `token of ${nickname}`, pinHash: 'pin', joinedMs: OPENED_MS + 1 };
}

export function act(t: number, type = 'press'): WorkAct {
  return { t, type };
}

export function workOf(attempt: number, rev: number, acts: readonly WorkAct[]): WorkRecord {
  return {
    attempt,
    rev,
    headS: rev,
    hash: rev % 2 === 0 ? `hash ${rev}` : null,
    setupHash: 'setup',
    startedMs: OPENED_MS + attempt,
    applied: rev,
    acts: [...acts],
    desk: [{ type: 'arrive' }],
  };
}

/** As a page goes on: one act more, the lines before as they were. */
export function oneMore(work: WorkRecord): WorkRecord {
  const rev = work.rev + 1;
  return { ...work, rev, headS: rev, acts: [...work.acts, act(rev)] };
}
