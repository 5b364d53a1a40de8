export { createPostgresqlDatabase, type PostgresqlOptions } from './postgresql-database.ts';
