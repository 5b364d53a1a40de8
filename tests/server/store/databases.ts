/** The databases that a store stands on: every promise is held by each. */
import { POSTGRESQL } from '../../../src/cli/house/services.ts';
import {
  createEmbeddedDatabase,
  createPostgresqlDatabase,
  type Database,
} from '../../../src/server/store/index.ts';
import { isThere, type RunningPostgresql, startPostgresql } from '../../support/services/index.ts';

/** Starting a server's own database from nothing, on a machine with other things to do. */
export const START_LIMIT_MS = 120_000;

/** Something to stand on, for as long as a file of tests runs. */
export interface Ground {
  /** Two on the same data, as two servers have them; the embedded one is one. */
  readonly pair: readonly [Database, Database];
  remove(): Promise<void>;
}

export const KINDS = ['embedded', 'postgresql'] as const;

/** Null where the service is missing. */
export async function makeGround(kind: (typeof KINDS)[number]): Promise<Ground | null> {
  if (kind === 'embedded') {
    const database = createEmbeddedDatabase({ folder: null });
    await database.warm();
    return { pair: [database, database], remove: () => database.close() };
  }
  if (!isThere(POSTGRESQL)) return null;
  const service: RunningPostgresql = await startPostgresql();
  const url = await service.newDatabase();
  const pair = [createPostgresqlDatabase({ url }), createPostgresqlDatabase({ url })] as const;
  // At once: only one of them may bring it up to date.
  await Promise.all(pair.map((database) => database.warm()));
  return {
    pair,
    async remove() {
      await Promise.all(pair.map((database) => database.close()));
      await service.remove();
    },
  };
}
