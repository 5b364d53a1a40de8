export * from './protocol/index.ts';
