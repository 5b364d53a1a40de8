// By itself: the page's first load checks saved paper and has no use for the engine.
export { planOfDrill, planOfJob, planOfLesson } from './desk-plan.ts';
export { deskEntrySchema, deskSchema } from './desk-schema.ts';
