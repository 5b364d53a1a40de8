export * from './bounds.ts';
export { classEntrySchema, classEventSchema, type Spoken, spokenSchema } from './entry-schema.ts';
export * from './http.ts';
export * from './messages.ts';
export * from './seat-schema.ts';
export * from './work-schema.ts';
