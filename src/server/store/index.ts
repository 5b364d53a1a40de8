export { createClassStore } from './classes/index.ts';
export { createDatabase, type DatabaseSettings } from './create-database.ts';
export { createEmbeddedDatabase, EMPTY_DATABASE, makeEmptyDatabase } from './embedded/index.ts';
export { isStoreFailure } from './failure.ts';
export { createPostgresqlDatabase } from './postgresql/index.ts';
export type * from './types.ts';
