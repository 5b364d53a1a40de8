// A folder of its own: the page in a package has no use for papers.
export { idOfName } from '../name-id.ts';
export type { XapiVersion } from '../xapi/statement.ts';
export { BUILT_FILES, readBuiltFiles } from './built-files.ts';
export * from './cmi5-statement.ts';
export { lmsFiles, lmsPackage, type PackageWords } from './lms-package.ts';
export * from './packaged.ts';
export { PACKAGED_META, PAGE } from './page-in-package.ts';
