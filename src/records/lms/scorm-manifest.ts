import { element, xmlText } from '../xml/xml.ts';
import type { Packaged } from './packaged.ts';

const CONTENT = 'http://www.imsproject.org/xsd/imscp_rootv1p1p2';
const SCORM = 'http://www.adlnet.org/xsd/adlcp_rootv1p2';
/** A title by that schema. */
const MOST_TITLE = 200;

/**
 * `imsmanifest.xml` of SCORM 1.2: one thing to launch, and every file of it.
 *
 * @param files paths of all files but this one
 */
export function scormManifestXml(
  { id, title, mastery }: Packaged,
  files: readonly string[],
  page: string,
): string {
  const said = element('title', {}, [title.slice(0, MOST_TITLE)]);
  return xmlText(
    element(
      'manifest',
      { xmlns: CONTENT, 'xmlns:adlcp': SCORM, identifier: `package-${id}`, version: '1.2' },
      [
        element('metadata', {}, [
          element('schema', {}, ['ADL SCORM']),
          element('schemaversion', {}, ['1.2']),
        ]),
        element('organizations', { default: 'all' }, [
          element('organization', { identifier: 'all' }, [
            said,
            element('item', { identifier: 'exercise', identifierref: 'page', isvisible: 'true' }, [
              said,
              ...(mastery === null
                ? []
                : [element('adlcp:masteryscore', {}, [String(Math.round(mastery * 100))])]),
            ]),
          ]),
        ]),
        element('resources', {}, [
          element(
            'resource',
            { identifier: 'page', type: 'webcontent', 'adlcp:scormtype': 'sco', href: page },
            files.map((href) => element('file', { href: addressOf(href) })),
          ),
        ]),
      ],
    ),
  );
}

/** A path as an address beside the manifest. */
function addressOf(path: string): string {
  return path.split('/').map(encodeURIComponent).join('/');
}
