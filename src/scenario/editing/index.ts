/** Changes in a file that leave its comments and its order alone; the engine does not come with it. */
export { MAX_FILE_CHARACTERS } from '../bounds.ts';
export { type Path, pathText } from '../place.ts';
export { dataIn, type EditedFile, editFile } from './edit-file.ts';
export { editPlain, isGroup, plainAt } from './edit-plain.ts';
export type { FileEdit, KeyOrder, Plain, PlainGroup } from './file-edit.ts';
export { fileText } from './file-text.ts';
