export { createClassStore } from './class-store.ts';
