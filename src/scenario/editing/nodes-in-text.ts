/** Where the parts of a parsed file stand in its text. */
import {
  isCollection,
  isMap,
  isScalar,
  type Node,
  type Pair,
  parseDocument,
  type YAMLMap,
  type YAMLSeq,
} from 'yaml';
import type { Path } from '../place.ts';
import { keyText } from '../yaml-nodes.ts';

export type AnyPair = Pair<Node | null, Node | null>;
export type Group = YAMLMap<Node | null, Node | null>;
export type List = YAMLSeq<Node | null>;

export function parseFile(text: string) {
  return parseDocument(text, {
    prettyErrors: false,
    uniqueKeys: false,
    merge: false,
    schema: 'core',
    version: '1.2',
  });
}

export function isGroupNode(node: Node | null | undefined): node is Group {
  return isMap(node);
}
export function isListNode(node: Node | null | undefined): node is List {
  return isCollection(node) && !isMap(node);
}
export function isFlow(node: Node | null | undefined): boolean {
  return isCollection(node) && node.flow === true;
}
export function isBlockText(node: Node | null): boolean {
  return isScalar(node) && (node.type === 'BLOCK_FOLDED' || node.type === 'BLOCK_LITERAL');
}
export function isNothing(node: Node | null | undefined): boolean {
  return (
    node === null ||
    node === undefined ||
    (isScalar(node) && (node.source ?? '') === '' && node.value === null)
  );
}

export function pairOf(node: Node | null | undefined, key: string): AnyPair | undefined {
  return isGroupNode(node)
    ? (node.items as AnyPair[]).find((pair) => keyText(pair) === key)
    : undefined;
}

export function childNode(
  node: Node | null | undefined,
  part: string | number,
): Node | null | undefined {
  if (typeof part === 'string') return pairOf(node, part)?.value;
  return isListNode(node) ? (node.items[part] as Node | null | undefined) : undefined;
}

/** From the root to what stands at the path; undefined from where there is nothing. */
export function nodesAlong(root: Node | null, path: Path): (Node | null | undefined)[] {
  const nodes: (Node | null | undefined)[] = [root];
  for (const part of path) nodes.push(childNode(nodes.at(-1), part));
  return nodes;
}

export function startOf(node: Node | null | undefined): number {
  return node?.range?.[0] ?? -1;
}

/** Behind the last character of a value: no comment after it, no end of line. */
export function endOf(text: string, node: Node | null | undefined): number {
  if (node === null || node === undefined) return -1;
  if (isCollection(node) && node.flow !== true) {
    const last = node.items.at(-1);
    if (last === undefined) return node.range?.[1] ?? -1;
    if (isMap(node)) return endOfPair(text, last as AnyPair);
    const end = endOf(text, last as Node | null);
    return end < 0 ? trimmedEnd(text, node.range?.[1] ?? 0) : end;
  }
  const end = node.range?.[1] ?? -1;
  return isBlockText(node) ? trimmedEnd(text, end) : end;
}

export function endOfPair(text: string, pair: AnyPair): number {
  return isNothing(pair.value) ? colonOf(text, pair) + 1 : endOf(text, pair.value);
}

export function colonOf(text: string, pair: AnyPair): number {
  return text.indexOf(':', pair.key?.range?.[1] ?? 0);
}

/** Of the line in which a place stands. */
export function lineStart(text: string, place: number): number {
  return text.lastIndexOf('\n', place - 1) + 1;
}
/** Behind the end of the line in which a place stands. */
export function nextLine(text: string, place: number): number {
  const end = text.indexOf('\n', place);
  return end < 0 ? text.length : end + 1;
}
export function columnOf(text: string, place: number): number {
  return place - lineStart(text, place);
}
export function isFirstInLine(text: string, place: number): boolean {
  return text.slice(lineStart(text, place), place).trim() === '';
}

/** The hyphen before an entry of a list. */
export function dashOf(text: string, node: Node | null | undefined): number {
  let place = startOf(node) - 1;
  while (place >= 0 && /\s/.test(text.charAt(place))) place -= 1;
  return text.charAt(place) === '-' ? place : -1;
}

function trimmedEnd(text: string, end: number): number {
  let place = end;
  while (place > 0 && /\s/.test(text.charAt(place - 1))) place -= 1;
  return place;
}
