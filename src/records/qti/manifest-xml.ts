import { element, xmlText } from '../xml/xml.ts';
import { identifierOf } from './names.ts';

export interface Resource {
  readonly name: string;
  readonly type: 'imsqti_item_xmlv2p1' | 'imsqti_test_xmlv2p1';
  readonly path: string;
  /** Names of resources that it needs. */
  readonly needs: readonly string[];
}

const PACKAGE = 'http://www.imsglobal.org/xsd/imscp_v1p1';

/** What lies in a package, by IMS Content Packaging 1.1 with the words of QTI 2.1. */
export function manifestXml(name: string, resources: readonly Resource[]): string {
  return xmlText(
    element('manifest', { xmlns: PACKAGE, identifier: identifierOf('package', name) }, [
      element('metadata', {}, [
        element('schema', {}, ['QTIv2.1 Package']),
        element('schemaversion', {}, ['1.0.0']),
      ]),
      element('organizations'),
      element(
        'resources',
        {},
        resources.map(({ name: identifier, type, path, needs }) =>
          element('resource', { identifier, type, href: path }, [
            element('file', { href: path }),
            ...needs.map((identifierref) => element('dependency', { identifierref })),
          ]),
        ),
      ),
    ]),
  );
}
