import { isAlias, isCollection, isMap, isScalar, type Node, type Pair } from 'yaml';
import { MAX_DEPTH, MAX_NODES } from './bounds.ts';
import type { Issue, IssueCode } from './issue.ts';
import { NOTHING_TO_ADD, type Phrase, phrase } from './phrase.ts';
import { type Path, type Place, pathText } from './place.ts';
import { foundNode, keyText, quoted } from './yaml-nodes.ts';

export interface PlainData {
  readonly data: unknown;
  /** Mistakes that make the data not worth checking further. */
  readonly grave: readonly Issue[];
  /** Mistakes that leave the rest readable, such as a key given twice. */
  readonly small: readonly Issue[];
}

const RESERVED_KEYS: ReadonlySet<string> = new Set(['__proto__', 'constructor', 'prototype']);

/**
 * Groups, lists, text, numbers, true and false out of parsed YAML, and nothing cleverer:
 * anchors, aliases, tags, keys that are no words and whatever is too deep or too much are issues.
 */
export function plainData(
  root: Node,
  text: string,
  file: string,
  placeAt: (offset: number) => Place,
): PlainData {
  const grave: Issue[] = [];
  const small: Issue[] = [];
  let nodes = 0;

  const issueAt = (
    code: IssueCode,
    node: Node | null,
    path: Path,
    found: Phrase,
    expected: Phrase = NOTHING_TO_ADD,
  ): Issue => {
    const place = placeAt(node?.range?.[0] ?? 0);
    return { file, ...place, path: pathText(path), code, found, expected, suggestion: null };
  };
  const tooMany = (node: Node | null, path: Path): boolean => {
    nodes += 1;
    if (nodes <= MAX_NODES) return false;
    if (!grave.some((issue) => issue.code === 'too-many-nodes')) {
      const expected = phrase('expected.at-most', { max: MAX_NODES });
      grave.push(issueAt('too-many-nodes', node, path, phrase('found.more'), expected));
    }
    return true;
  };
  const refuseProperties = (node: Node, path: Path): void => {
    if (node.anchor !== undefined) {
      grave.push(issueAt('anchor', node, path, quoted(`&${node.anchor}`)));
    }
    if (node.tag !== undefined) grave.push(issueAt('tag', node, path, quoted(node.tag)));
  };

  const walk = (node: Node | null, path: Path, depth: number): unknown => {
    if (tooMany(node, path) || node === null) return null;
    if (isAlias(node)) {
      grave.push(issueAt('alias', node, path, quoted(`*${node.source}`)));
      return null;
    }
    refuseProperties(node, path);
    if (isScalar(node)) return node.value;
    if (!isCollection(node)) return null;
    if (depth > MAX_DEPTH) {
      const expected = phrase('expected.at-most', { max: MAX_DEPTH });
      grave.push(issueAt('too-deep', node, path, phrase('found.more'), expected));
      return null;
    }
    if (isMap(node)) return walkGroup(node.items as Pair<Node | null, Node | null>[], path, depth);
    return node.items.map((item, i) => walk(item as Node | null, [...path, i], depth + 1));
  };
  const walkGroup = (
    pairs: readonly Pair<Node | null, Node | null>[],
    path: Path,
    depth: number,
  ): Record<string, unknown> => {
    const group: Record<string, unknown> = {};
    for (const pair of pairs) {
      const key = keyText(pair);
      if (tooMany(pair.key ?? pair.value, path)) break;
      if (pair.key !== null) refuseProperties(pair.key, path);
      if (key === null) {
        grave.push(issueAt('bad-key', pair.key ?? pair.value, path, foundNode(pair.key, text)));
        continue;
      }
      const here = [...path, key];
      const value = walk(pair.value, here, depth + 1);
      if (RESERVED_KEYS.has(key)) small.push(issueAt('reserved-key', pair.key, here, quoted(key)));
      else if (Object.hasOwn(group, key)) {
        small.push(issueAt('duplicate-key', pair.key, here, quoted(key)));
      } else group[key] = value;
    }
    return group;
  };
  return { data: walk(root, [], 1), grave, small };
}
