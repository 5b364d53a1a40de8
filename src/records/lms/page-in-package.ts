/** The built page as it stands in a package: its text says so, and what belongs to its own server stays out. */
import { PACKAGED_FILE } from './packaged.ts';

export const PAGE = 'index.html';
/** By this the page knows, and finds its exercise. */
export const PACKAGED_META = 'flamewright-package';

/** They keep the page on a device by its own address; a learning system has addresses of its own. */
const OF_ITS_SERVER =
  /^(?:sw\.js|manifest\.webmanifest|files\.json|icons\/(?:small|large|masked)\.png)$/;
const MANIFEST_LINK = /\s*<link rel="manifest"[^>]*>/;
const HEAD = '<meta charset="utf-8" />';

export function belongsInPackage(path: string): boolean {
  return !OF_ITS_SERVER.test(path);
}

/** @throws where the text is not that of the built page */
export function pageInPackage(html: string): string {
  if (!html.includes(HEAD)) throw new Error(`the page has no ${HEAD}`);
  return html
    .replace(MANIFEST_LINK, '')
    .replace(HEAD, `${HEAD}\n    <meta name="${PACKAGED_META}" content="${PACKAGED_FILE}" />`);
}
