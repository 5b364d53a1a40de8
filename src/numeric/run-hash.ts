import { floatCell, floatWords, HIGH, LOW } from './float-words.ts';
import { scramble } from './seed.ts';

const NAN_HIGH = 0x7ff80000;

/** State of an incremental hash: two lanes of 32 bits and the count of what went in. */
export interface HashState {
  a: number;
  b: number;
  count: number;
}

/**
 * A run hash: two runs that differ in one bit of one number anywhere get different digests.
 *
 * Each lane is a bijection of its state for every input, so a difference, once in, never heals by
 * itself. Guards against accidents and engine differences, not against an adversary.
 */
export function createHash(): HashState {
  return { a: 0x243f6a88, b: 0x85a308d3 | 0, count: 0 };
}

/** Takes in one number by bit pattern; +0 and −0 differ, every NaN counts as the same. */
export function addNumber(hash: HashState, value: number): void {
  floatCell[0] = value;
  const isNumber = !Number.isNaN(value);
  const high = isNumber ? (floatWords[HIGH] as number) : NAN_HIGH;
  const low = isNumber ? (floatWords[LOW] as number) : 0;
  let a = Math.imul(hash.a ^ low, 0x9e3779b1);
  a = Math.imul(a ^ (a >>> 15) ^ high, 0x85ebca77);
  let b = Math.imul(hash.b ^ high, 0xc2b2ae3d);
  b = Math.imul((b ^ (b >>> 16)) + low, 0x27d4eb2f);
  hash.a = a ^ (a >>> 13);
  hash.b = b ^ (b >>> 14);
  hash.count++;
}

/** Takes in values[from] to values[to − 1]; the same as adding them one by one. */
export function addNumbers(
  hash: HashState,
  values: Float64Array,
  from = 0,
  to: number = values.length,
): void {
  let laneA = hash.a;
  let laneB = hash.b;
  for (let i = from; i < to; i++) {
    const value = values[i] as number;
    floatCell[0] = value;
    const isNumber = !Number.isNaN(value);
    const high = isNumber ? (floatWords[HIGH] as number) : NAN_HIGH;
    const low = isNumber ? (floatWords[LOW] as number) : 0;
    let a = Math.imul(laneA ^ low, 0x9e3779b1);
    a = Math.imul(a ^ (a >>> 15) ^ high, 0x85ebca77);
    let b = Math.imul(laneB ^ high, 0xc2b2ae3d);
    b = Math.imul((b ^ (b >>> 16)) + low, 0x27d4eb2f);
    laneA = a ^ (a >>> 13);
    laneB = b ^ (b >>> 14);
  }
  hash.a = laneA;
  hash.b = laneB;
  hash.count += Math.max(0, to - from);
}

/**
 * Takes in the bit patterns of 64-bit numbers, given as their 32-bit words in memory order: the
 * fast way for whole frames. The two halves go through lanes of their own side by side, and the
 * second's are then folded in, again by a bijection. The numbers must not be NaN, whose pattern is
 * an engine's own choice.
 *
 * @param from, to places in `words`; two words a number
 */
export function addWords(hash: HashState, words: Int32Array, from: number, to: number): void {
  const count = Math.max(0, (to - from) >> 1);
  const half = count >> 1;
  const second = 2 * half;
  let a = hash.a;
  let b = hash.b;
  let c = 0x3f84d5b5;
  let d = 0x12f83d5b;
  for (let i = from; i < from + second; i += 2) {
    const low = words[i + LOW] as number;
    const high = words[i + HIGH] as number;
    const lowAfter = words[i + second + LOW] as number;
    const highAfter = words[i + second + HIGH] as number;
    a = Math.imul(a ^ low, 0x9e3779b1);
    b = Math.imul(b ^ high, 0xc2b2ae3d);
    c = Math.imul(c ^ lowAfter, 0x9e3779b1);
    d = Math.imul(d ^ highAfter, 0xc2b2ae3d);
    a = Math.imul(a ^ (a >>> 15) ^ high, 0x85ebca77);
    b = Math.imul((b ^ (b >>> 16)) + low, 0x27d4eb2f);
    c = Math.imul(c ^ (c >>> 15) ^ highAfter, 0x85ebca77);
    d = Math.imul((d ^ (d >>> 16)) + lowAfter, 0x27d4eb2f);
    a ^= a >>> 13;
    b ^= b >>> 14;
    c ^= c >>> 13;
    d ^= d >>> 14;
  }
  hash.a = Math.imul(a ^ c, 0x9e3779b1);
  hash.b = Math.imul(b ^ d, 0xc2b2ae3d);
  hash.count += 2 * half;
  if (count > 2 * half) addNumber(hash, numberOf(words, to - 2));
}

function numberOf(words: Int32Array, at: number): number {
  floatWords[LOW] = words[at + LOW] as number;
  floatWords[HIGH] = words[at + HIGH] as number;
  return floatCell[0] as number;
}

/** Takes in a text: its length, then its UTF-16 units. */
export function addText(hash: HashState, text: string): void {
  addNumber(hash, text.length);
  for (let i = 0; i < text.length; i++) addNumber(hash, text.charCodeAt(i));
}

/** 16 hexadecimal characters. Does not change the state: more may be added afterwards. */
export function digest(hash: HashState): string {
  const first = scramble(hash.a ^ scramble(hash.b ^ hash.count));
  const second = scramble(hash.b ^ scramble(first ^ 0x13198a2e));
  return toHex(first) + toHex(second);
}

function toHex(word: number): string {
  return word.toString(16).padStart(8, '0');
}
