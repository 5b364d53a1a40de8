// Actions are checked by the engine's tables, so that this brings the engine with it.
export { deskEntrySchema, deskSchema } from '../desk/index.ts';
export { actionSchema, timedActionSchema } from './action-schema.ts';
