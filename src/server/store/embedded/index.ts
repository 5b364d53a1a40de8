export { createEmbeddedDatabase, type EmbeddedOptions } from './embedded-database.ts';
export { EMPTY_DATABASE } from './empty-database.ts';
export { makeEmptyDatabase } from './make-empty-database.ts';
