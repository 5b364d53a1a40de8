export { registerClasses } from './class-routes.ts';
export type { HttpDeps } from './http-types.ts';
export { createInstructorKey, type InstructorKey } from './instructor-key.ts';
export { registerResults } from './result-routes.ts';
export { sweepExpired } from './sweep-expired.ts';
export { registerWatch } from './watch-routes.ts';
