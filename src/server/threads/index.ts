export { createPool, type Pool, type PoolOptions } from './pool.ts';
export { startTypescriptWorker } from './typescript-worker.ts';
