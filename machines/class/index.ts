export { classMachine } from './class.ts';
export * from './entries.ts';
export type { ClassMeta, ClassRuleMeta } from './meta.ts';
export * from './state.ts';
export { createClass, foldClass, takeClassEntry } from './take-entry.ts';
