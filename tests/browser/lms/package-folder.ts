/** A package as a learning system has it: unpacked, in a folder of the system's own server. */
import { unzipSync } from 'fflate';
import { DIST } from '../../../src/cli/house/paths.ts';
import { pageFiles } from '../../../src/cli/package/page-files.ts';
import { lmsPackage, type PackageWish, packagedOf } from '../../../src/records/lms/index.ts';

export type Folder = Readonly<Record<string, Uint8Array>>;

export function packageFolder(wish: PackageWish): Folder {
  const { data } = lmsPackage(packagedOf(wish), pageFiles(DIST), { about: 'Of a test.' });
  return unzipSync(data as Uint8Array);
}
