/** Databases that tests and the load bench start for themselves and end again. */
export { type RunningPostgresql, startPostgresql } from './postgresql.ts';
export { startRedis } from './redis.ts';
export { freePort, isRoot, isThere, type RunningService } from './start-service.ts';
