/** XML 1.0 written from plain data: what it holds, any reader gets back. */
import { withoutForbidden } from '../plain-text.ts';

export type XmlNode = string | XmlElement;
export interface XmlElement {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: readonly XmlNode[];
}

const HEAD = '<?xml version="1.0" encoding="UTF-8"?>\n';
const BECOMES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  // As `]]>` it may not stand in text.
  '>': '&gt;',
  '"': '&quot;',
  // A reader would make these into other white space.
  '\r': '&#13;',
  '\n': '&#10;',
  '\t': '&#9;',
};

export function element(
  name: string,
  attributes: Readonly<Record<string, string>> = {},
  children: readonly XmlNode[] = [],
): XmlElement {
  return { name, attributes, children };
}

export function xmlText(root: XmlElement): string {
  return `${HEAD}${nodeText(root)}\n`;
}

/** One piece, without the head of a file; an element without children closes itself. */
export function nodeText(node: XmlNode): string {
  if (typeof node === 'string') return escaped(node, /[&<>\r]/g);
  const { name, attributes, children } = node;
  const said = Object.entries(attributes)
    .map(([key, value]) => ` ${key}="${escaped(value, /[&<>"\r\n\t]/g)}"`)
    .join('');
  if (children.length === 0) return `<${name}${said}/>`;
  return `<${name}${said}>${children.map(nodeText).join('')}</${name}>`;
}

function escaped(text: string, special: RegExp): string {
  return withoutForbidden(text).replace(special, (one) => BECOMES[one] ?? one);
}
