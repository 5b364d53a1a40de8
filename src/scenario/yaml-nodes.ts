import { isCollection, isMap, isPair, isScalar, type Node, type Pair } from 'yaml';
import { MAX_QUOTED } from './bounds.ts';
import { type Phrase, phrase } from './phrase.ts';
import type { Path } from './place.ts';

export function quoted(text: string): Phrase {
  const line = text.replace(/\s+/g, ' ').trim();
  const short = line.length > MAX_QUOTED ? `${line.slice(0, MAX_QUOTED - 1)}…` : line;
  return phrase('found.text', { text: short });
}

/** A key is a word; a number or the like as a key is taken as it is written. */
export function keyText(pair: Pair<Node | null, Node | null>): string | null {
  if (!isScalar(pair.key)) return null;
  const { value, source } = pair.key;
  const text = typeof value === 'string' ? value : (source ?? '');
  return text === '' ? null : text;
}

export function foundNode(node: Node | null, text: string): Phrase {
  if (node === null) return phrase('found.nothing');
  if (isMap(node)) return phrase('found.group');
  if (isCollection(node)) return phrase('found.list');
  if (isScalar(node)) {
    if (node.value === null && (node.source ?? '') === '') return phrase('found.nothing');
    const [from, to] = node.range ?? [0, 0];
    const raw = text.slice(from, to);
    return typeof node.value === 'string'
      ? node.value === ''
        ? phrase('found.empty-text')
        : quoted(node.value)
      : phrase('found.value', { text: quoted(raw).params?.text ?? '' });
  }
  return phrase('found.nothing');
}

function pairAt(
  node: Node | null | undefined,
  key: string,
): Pair<Node | null, Node | null> | undefined {
  if (!isMap(node)) return undefined;
  return (node.items as Pair<Node | null, Node | null>[]).find(
    (pair) => isPair(pair) && keyText(pair) === key,
  );
}

export function nodeAt(root: Node | null, path: Path): Node | null | undefined {
  let node: Node | null | undefined = root;
  for (const part of path) {
    if (node === undefined || node === null) return undefined;
    if (typeof part === 'string') node = pairAt(node, part)?.value;
    else if (isCollection(node) && !isMap(node)) node = node.items[part] as Node | undefined;
    else return undefined;
  }
  return node;
}

/** The offset of the value (or key) at a path, or of the nearest thing around it. */
export function offsetOf(root: Node | null, path: Path, part: 'key' | 'value'): number {
  let node: Node | null = root;
  let offset = root?.range?.[0] ?? 0;
  for (const [i, name] of path.entries()) {
    let next: Node | null | undefined;
    if (typeof name === 'string') {
      const pair = pairAt(node, name);
      if (pair === undefined) return offset;
      offset = pair.key?.range?.[0] ?? offset;
      next = pair.value;
      if (part === 'key' && i === path.length - 1) return offset;
    } else if (isCollection(node) && !isMap(node)) {
      next = node.items[name] as Node | undefined;
      if (next === undefined) return offset;
    } else return offset;
    // An empty value has no place of its own worth showing: its key does.
    if (next === null || (isScalar(next) && isEmptyScalar(next))) return offset;
    offset = next?.range?.[0] ?? offset;
    node = next ?? null;
  }
  return offset;
}

export function isEmptyScalar(node: Node): boolean {
  return isScalar(node) && node.value === null && (node.source ?? '') === '';
}
