import type { PGlite } from '@electric-sql/pglite';

/** With one connection the engine does by itself neither of these two. */
export interface Upkeep {
  /** After each transaction. `isBusy`: others wait, so only what cannot wait is done. */
  after(bytesWritten: number, isBusy: boolean): Promise<void>;
}

/** Log since the last checkpoint: read again after a crash, and kept on the disk until then. */
const CHECKPOINT_BYTES = 8 * 2 ** 20;
const CHECKPOINT_AT_MOST_BYTES = 32 * 2 ** 20;
/** What was deleted or replaced gives its room back only so. */
const CHECKPOINTS_TO_VACUUM = 8;
/** Of statements, before the length of the log is asked again. */
const ASK_EVERY_BYTES = 2 ** 18;
/** A statement costs some log even when it says little. */
const STATEMENT_BYTES = 512;

export function createUpkeep(database: PGlite): Upkeep {
  let sinceAsked = 0;
  let checkpointAt = 0;
  let checkpoints = 0;

  async function logBytes(): Promise<number> {
    const { rows } = await database.query<{ at: string }>(
      `select (pg_current_wal_lsn() - '0/0'::pg_lsn)::text as at`,
    );
    return Number(rows[0]?.at ?? 0);
  }

  return {
    async after(bytesWritten, isBusy) {
      sinceAsked += bytesWritten + STATEMENT_BYTES;
      if (sinceAsked < ASK_EVERY_BYTES) return;
      const at = await logBytes();
      if (checkpointAt === 0) checkpointAt = at;
      const due = isBusy ? CHECKPOINT_AT_MOST_BYTES : CHECKPOINT_BYTES;
      if (at - checkpointAt < due) {
        sinceAsked = 0;
        return;
      }
      await database.exec('checkpoint');
      checkpoints++;
      if (checkpoints % CHECKPOINTS_TO_VACUUM === 0) await database.exec('vacuum analyze');
      checkpointAt = await logBytes();
      sinceAsked = 0;
    },
  };
}
