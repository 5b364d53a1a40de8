import type { Node } from 'yaml';
import type { Path } from '../place.ts';
import { keyText } from '../yaml-nodes.ts';
import type { FileEdit, KeyOrder, Plain } from './file-edit.ts';
import {
  type AnyPair,
  colonOf,
  columnOf,
  dashOf,
  endOf,
  endOfPair,
  type Group,
  isBlockText,
  isFirstInLine,
  isFlow,
  isGroupNode,
  isListNode,
  isNothing,
  type List,
  lineStart,
  nextLine,
  nodesAlong,
  pairOf,
  startOf,
} from './nodes-in-text.ts';
import { afterDash, afterKey, entryText, flowText, pairText } from './value-text.ts';

/** Longer remarks behind a value are left where they are. */
const MAX_COMMENT = 2000;

interface Writing {
  readonly text: string;
  readonly root: Node | null;
  readonly order: KeyOrder;
}

/**
 * The text with one change made at its place and every other character as it was; null where the
 * place is written in a way that this does not know. Whoever calls holds what comes of it against
 * what it should say.
 */
export function editInPlace(
  text: string,
  root: Node | null,
  edit: FileEdit,
  order: KeyOrder,
): string | null {
  const writing = { text, root, order };
  switch (edit.do) {
    case 'set':
      return set(writing, edit.path, edit.value);
    case 'remove':
      return remove(writing, edit.path);
    case 'insert':
      return insert(writing, edit.path, edit.index, edit.value);
    case 'swap':
      return swap(writing, edit.path, edit.index);
  }
}

function set(writing: Writing, path: Path, value: Plain): string | null {
  const { text, root } = writing;
  const nodes = nodesAlong(root, path);
  const missing = path.findIndex((part, i) =>
    typeof part === 'string' ? pairOf(nodes[i], part) === undefined : nodes[i + 1] === undefined,
  );
  if (missing >= 0) return setMissing(writing, path, value, missing);
  const part = path.at(-1);
  const parent = nodes.at(-2);
  const node = nodes.at(-1);
  if (part === undefined) return null;
  const from = startOf(node);
  if (nodes.slice(0, -1).some(isFlow)) {
    return isNothing(node) ? null : spliced(text, from, endOf(text, node), flowText(value));
  }
  if (typeof part === 'number') {
    const dash = dashOf(text, node);
    if (dash < 0) return null;
    return rewritten(text, from, endOf(text, node), afterDash(value, columnOf(text, dash)));
  }
  const pair = pairOf(parent, part);
  const key = startOf(pair?.key ?? null);
  if (pair === undefined || key < 0) return null;
  const colon = colonOf(text, pair);
  const written = afterKey(value, columnOf(text, key), colon - key + 1);
  const staysOnLine =
    !isNothing(node) && !written.startsWith('\n') && (isFlow(node) || !isCollectionNode(node));
  return staysOnLine && !isBlockText(node ?? null)
    ? rewritten(text, from, endOf(text, node), written.slice(1))
    : rewritten(text, colon + 1, endOfPair(text, pair), written);
}

/** @param at the first part of the path that is not there */
function setMissing(writing: Writing, path: Path, value: Plain, at: number): string | null {
  const { text, root, order } = writing;
  const group = path.slice(0, at);
  const part = path[at];
  const wrapped = path
    .slice(at + 1)
    .reduceRight<Plain>(
      (inner, each) => (typeof each === 'number' ? [inner] : { [each]: inner }),
      value,
    );
  const node = nodesAlong(root, group).at(-1);
  if (typeof part === 'number') {
    if (isNothing(node)) return set(writing, group, [wrapped]);
    return isListNode(node) && node.items.length === part
      ? insert(writing, group, part, wrapped)
      : null;
  }
  if (part === undefined) return null;
  if (!isGroupNode(node)) {
    if (group.length > 0) return set(writing, group, { [part]: wrapped });
    return isNothing(node) ? `${text}${pairText(part, wrapped, 0)}\n` : null;
  }
  const before = predecessorIn(node, part, order(group));
  const first = node.items[0] as AnyPair | undefined;
  if (isFlow(node) || nodesAlong(root, group).some(isFlow)) {
    const pair = `${part}: ${flowText(wrapped)}`;
    if (first === undefined) return spliced(text, startOf(node), endOf(text, node), `{ ${pair} }`);
    const place = before === null ? startOf(first.key) : endOfPair(text, before);
    return spliced(text, place, place, before === null ? `${pair}, ` : `, ${pair}`);
  }
  if (first === undefined) return null;
  const column = columnOf(text, startOf(first.key));
  const written = `${pairText(part, wrapped, column)}\n`;
  if (before === null && isFirstInLine(text, startOf(first.key))) {
    const place = lineStart(text, startOf(first.key));
    return spliced(text, place, place, written);
  }
  const place = nextLine(text, endOfPair(text, before ?? first));
  return spliced(text, place, place, written);
}

/** After which key a new one goes; null: before all of them. */
function predecessorIn(group: Group, key: string, order: readonly string[]): AnyPair | null {
  const pairs = group.items as AnyPair[];
  const rank = order.indexOf(key);
  if (rank < 0) return pairs.at(-1) ?? null;
  for (const name of order.slice(0, rank).reverse()) {
    const there = pairs.find((pair) => keyText(pair) === name);
    if (there !== undefined) return there;
  }
  return null;
}

function remove(writing: Writing, path: Path): string | null {
  const { text, root } = writing;
  const part = path.at(-1);
  const group = path.slice(0, -1);
  const nodes = nodesAlong(root, path);
  const parent = nodes.at(-2);
  if (part === undefined) return null;
  if (typeof part === 'number') return removeEntry(writing, path, part);
  const pair = pairOf(parent, part);
  if (pair === undefined || !isGroupNode(parent)) return text;
  const pairs = parent.items as AnyPair[];
  if (pairs.length === 1 && group.length > 0) {
    return typeof group.at(-1) === 'number' ? set(writing, group, {}) : remove(writing, group);
  }
  if (nodes.slice(0, -1).some(isFlow)) {
    const spans = pairs.map((each) => [startOf(each.key), endOfPair(text, each)] as const);
    return cutOut(text, spans, pairs.indexOf(pair));
  }
  const key = startOf(pair.key);
  const end = nextLine(text, endOfPair(text, pair));
  if (isFirstInLine(text, key)) return spliced(text, lineStart(text, key), end, '');
  // It stands behind a hyphen: the next key takes its place there, remarks between go above.
  const next = startOf(pairs[1]?.key ?? null);
  const line = lineStart(text, key);
  const indent = /^ */.exec(text.slice(line, key))?.[0] ?? '';
  if (next < 0) return null;
  const between = text
    .slice(end, next)
    .split('\n')
    .map((each) => each.trim());
  const remarks = between
    .filter((each) => each.startsWith('#'))
    .map((each) => `${indent}${each}\n`);
  return `${text.slice(0, line)}${remarks.join('')}${text.slice(line, key)}${text.slice(next)}`;
}

function removeEntry(writing: Writing, path: Path, index: number): string | null {
  const { text, root } = writing;
  const group = path.slice(0, -1);
  const nodes = nodesAlong(root, path);
  const list = nodes.at(-2);
  if (!isListNode(list) || nodes.at(-1) === undefined) return text;
  if (list.items.length === 1) return set(writing, group, []);
  if (nodes.slice(0, -1).some(isFlow)) return cutOut(text, spansOf(text, list), index);
  const dash = dashOf(text, list.items[index]);
  if (dash < 0 || !isFirstInLine(text, dash)) return null;
  const end = nextLine(text, endOf(text, list.items[index]));
  return spliced(text, lineStart(text, dash), end, '');
}

function insert(writing: Writing, path: Path, index: number, value: Plain): string | null {
  const { text, root } = writing;
  const nodes = nodesAlong(root, path);
  const list = nodes.at(-1);
  if (!isListNode(list) || list.items.length === 0) return set(writing, path, [value]);
  if (nodes.some(isFlow)) {
    const spans = spansOf(text, list);
    const place = index === 0 ? spans[0]?.[0] : spans[index - 1]?.[1];
    if (place === undefined) return null;
    const written = index === 0 ? `${flowText(value)}, ` : `, ${flowText(value)}`;
    return spliced(text, place, place, written);
  }
  const dash = dashOf(text, list.items[0]);
  if (dash < 0 || !isFirstInLine(text, dash)) return null;
  const before = list.items[index - 1];
  if (index > 0 && before === undefined) return null;
  const place = index === 0 ? lineStart(text, dash) : nextLine(text, endOf(text, before));
  return spliced(text, place, place, `${entryText(value, columnOf(text, dash))}\n`);
}

/** Comments above an entry go along with it. */
function swap({ text, root }: Writing, path: Path, index: number): string | null {
  const nodes = nodesAlong(root, path);
  const list = nodes.at(-1);
  const one = isListNode(list) ? list.items[index] : undefined;
  const other = isListNode(list) ? list.items[index + 1] : undefined;
  if (!isListNode(list) || one === undefined || other === undefined) return text;
  if (nodes.some(isFlow)) {
    const [a, b] = [startOf(one), endOf(text, one)];
    const [c, d] = [startOf(other), endOf(text, other)];
    return `${text.slice(0, a)}${text.slice(c, d)}${text.slice(b, c)}${text.slice(a, b)}${text.slice(d)}`;
  }
  const before = list.items[index - 1];
  const dash = dashOf(text, one);
  if (dash < 0 || !isFirstInLine(text, dash)) return null;
  const key = pairOf(nodes.at(-2), String(path.at(-1)));
  const opens = key === undefined ? dash : colonOf(text, key);
  const from = before === undefined ? nextLine(text, opens) : nextLine(text, endOf(text, before));
  const middle = nextLine(text, endOf(text, one));
  const to = nextLine(text, endOf(text, other));
  if (from > dash || middle > to) return null;
  return `${text.slice(0, from)}${text.slice(middle, to)}${text.slice(from, middle)}${text.slice(to)}`;
}

function spansOf(text: string, list: List): (readonly [number, number])[] {
  return list.items.map((node) => [startOf(node), endOf(text, node)] as const);
}

/** One of several things with commas between. */
function cutOut(
  text: string,
  spans: readonly (readonly [number, number])[],
  index: number,
): string | null {
  const own = spans[index];
  const next = spans[index + 1];
  const before = spans[index - 1];
  if (own === undefined) return null;
  if (next !== undefined) return spliced(text, own[0], next[0], '');
  return before === undefined ? null : spliced(text, before[1], own[1], '');
}

/** What becomes several lines leaves a comment that followed it on the first of them. */
function rewritten(text: string, from: number, to: number, put: string): string | null {
  const firstLine = put.indexOf('\n');
  const comment = /^[^\S\n]+#.*/.exec(text.slice(to, to + MAX_COMMENT))?.[0] ?? '';
  if (firstLine < 0 || comment === '') return spliced(text, from, to, put);
  const moved = put.slice(0, firstLine) + comment + put.slice(firstLine);
  return spliced(text, from, to + comment.length, moved);
}

function spliced(text: string, from: number, to: number, put: string): string | null {
  return from < 0 || to < from ? null : text.slice(0, from) + put + text.slice(to);
}

function isCollectionNode(node: Node | null | undefined): boolean {
  return isGroupNode(node) || isListNode(node);
}
