import { strFromU8, strToU8, type Zippable, zipSync } from 'fflate';
import type { RecordFile } from '../file.ts';
import { cmi5CourseXml } from './cmi5-course.ts';
import { PACKAGED_FILE, type Packaged } from './packaged.ts';
import { belongsInPackage, PAGE, pageInPackage } from './page-in-package.ts';
import { scormManifestXml } from './scorm-manifest.ts';

/** By local time without a zone, as a zip keeps it: the bytes are the same wherever it is made. */
const PACKED_AT = '2020-01-01T12:00:00';
/** Packed already: trying again takes time and gains nothing. */
const PACKED = /\.(?:png|woff2?|atlas)$/;
const SHORT_NAME = 60;

export interface PackageWords {
  /** What the exercise is, in a sentence or two. */
  readonly about: string;
}

/**
 * Every file of a package by its path, the manifest first.
 *
 * @param page files of the built page by their paths
 * @throws where the page itself is not among them
 */
export function lmsFiles(
  packaged: Packaged,
  page: ReadonlyMap<string, Uint8Array>,
  { about }: PackageWords,
): ReadonlyMap<string, Uint8Array> {
  const html = page.get(PAGE);
  if (html === undefined) throw new Error(`no ${PAGE} among the files of the page`);
  const own = [...page].filter(([path]) => path !== PAGE && belongsInPackage(path));
  const content: readonly (readonly [string, Uint8Array])[] = [
    [PAGE, strToU8(pageInPackage(strFromU8(html)))],
    [PACKAGED_FILE, strToU8(`${JSON.stringify(packaged, null, 2)}\n`)],
    ...own.sort(([a], [b]) => (a < b ? -1 : 1)),
  ];
  const manifest: readonly [string, string] =
    packaged.form === 'cmi5'
      ? ['cmi5.xml', cmi5CourseXml(packaged, about, PAGE)]
      : [
          'imsmanifest.xml',
          scormManifestXml(
            packaged,
            content.map(([path]) => path),
            PAGE,
          ),
        ];
  return new Map([[manifest[0], strToU8(manifest[1])], ...content]);
}

/** The same exercise and page give the same bytes. */
export function lmsPackage(
  packaged: Packaged,
  page: ReadonlyMap<string, Uint8Array>,
  words: PackageWords,
): RecordFile {
  const files: Zippable = {};
  for (const [path, bytes] of lmsFiles(packaged, page, words)) {
    files[path] = PACKED.test(path) ? [bytes, { level: 0 }] : bytes;
  }
  return {
    name: `flamewright-${fileWords(packaged.title)}-${packaged.form}.zip`,
    type: 'application/zip',
    data: zipSync(files, { level: 6, mtime: PACKED_AT }),
  };
}

function fileWords(title: string): string {
  const words = title
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .slice(0, SHORT_NAME)
    .replace(/^-+|-+$/g, '');
  return words === '' ? 'package' : words;
}
