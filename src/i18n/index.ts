export * from './message.ts';
export * from './say.ts';
