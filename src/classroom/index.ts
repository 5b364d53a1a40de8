export type * from './client/index.ts';
export * from './protocol/index.ts';
