export * from './desk.ts';
export { drillMachine } from './drill.ts';
export * from './entries.ts';
export { jobMachine } from './job.ts';
export { lessonMachine } from './lesson.ts';
export type { DeskMeta, DeskRuleMeta } from './meta.ts';
export { createDesk, foldDesk, takeEntry } from './take-entry.ts';
export * from './words.ts';
