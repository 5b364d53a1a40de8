export * from './load-messages.ts';
export * from './message.ts';
export * from './say.ts';
