export * from './conduct/index.ts';
export type { Message, MessageValue } from './message.ts';
export * from './tools/index.ts';
