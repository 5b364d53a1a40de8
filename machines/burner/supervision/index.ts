export { drives } from './drives.ts';
export { flame } from './flame.ts';
export { limits } from './limits.ts';
export { reset } from './reset.ts';
export { supply } from './supply.ts';
