import { createEmbeddedDatabase } from './embedded/index.ts';
import { createPostgresqlDatabase } from './postgresql/index.ts';
import type { Database } from './types.ts';

export interface DatabaseSettings {
  /** Of the embedded database; made when it is first used. */
  readonly folder: string;
  /** Of a PostgreSQL in its place. */
  readonly databaseUrl?: string;
}

/** The database that the settings name. Nothing is opened before something is asked of it. */
export function createDatabase({ folder, databaseUrl }: DatabaseSettings): Database {
  return databaseUrl === undefined
    ? createEmbeddedDatabase({ folder })
    : createPostgresqlDatabase({ url: databaseUrl });
}
