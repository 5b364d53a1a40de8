export type { LibraryBase } from './check-file.ts';
export { LIBRARY_KINDS, type LibraryKind } from './library-kinds.ts';
export { type LibraryDeps, registerLibrary } from './register-library.ts';
