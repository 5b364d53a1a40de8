import type { Message } from '../message.ts';
import type { LadderElement } from './types.ts';

/** Parts of devices and controller terminals that the catalogue has words for. */
export const NAMED_PARTS = [
  'coil',
  'contact',
  'feedback',
  'end-switch',
  'pump',
  'loop',
  'upper',
  'lower',
  'wiper',
  'motor',
  'contactor',
  'reference',
  'signal',
  'in',
  'out',
  'ai',
  'ao',
] as const;
const NAMED = new Set<string>(NAMED_PARTS);
const BEFORE = new Set<string>(['in', 'out', 'ai', 'ao']);

/** An element's name in words: `fan-relay.coil` is a part of a device, `in.airProved` a terminal. */
export function elementName(
  { name, called }: Pick<LadderElement, 'name' | 'called'>,
  message: Message,
): string {
  if (called !== undefined) return wordsOf(called);
  const dot = name.indexOf('.');
  if (dot < 0) return wordsOf(name);
  const head = name.slice(0, dot);
  const tail = name.slice(dot + 1);
  const [part, device] = BEFORE.has(head) ? [head, tail] : [tail, head];
  if (!NAMED.has(part)) return wordsOf(name.replace('.', ' '));
  return message(`view.ladder.part.${part}`, { device: wordsOf(device) });
}

function wordsOf(id: string): string {
  return id
    .replace(/-/g, ' ')
    .replace(/([a-z])([A-Z])/g, (_all, before: string, after: string) => `${before} ${after}`)
    .toLowerCase();
}

const OPENS = new Set(['contact', 'output']);
const WORKS = new Set(['coil', 'lamp', 'motor', 'transformer', 'electronics', 'load', 'input']);

/** How an element stands, in a word. */
export function stateWord(kind: string, made: boolean, message: Message): string {
  const family = OPENS.has(kind)
    ? 'contact'
    : kind === 'fuse'
      ? 'fuse'
      : WORKS.has(kind)
        ? 'load'
        : 'signal';
  return message(`view.ladder.state.${family}.${made ? 'made' : 'open'}`);
}
