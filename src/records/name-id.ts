/** Ids made from names: the same name gives the same id everywhere (RFC 4122, version 5). */
import { strToU8 } from 'fflate';

const SPACE_OF_ADDRESSES = '6ba7b811-9dad-11d1-80b4-00c04fd430c8';

/** @param name an address; in the standard's own name space of addresses */
export function idOfName(name: string): string {
  const bytes = sha1([...bytesOfHex(SPACE_OF_ADDRESSES.replaceAll('-', '')), ...strToU8(name)]);
  const id = bytes.slice(0, 16);
  id[6] = ((id[6] ?? 0) & 0x0f) | 0x50;
  id[8] = ((id[8] ?? 0) & 0x3f) | 0x80;
  const hex = hexOf(id);
  return [
    hex.slice(0, 8),
    hex.slice(8, 12),
    hex.slice(12, 16),
    hex.slice(16, 20),
    hex.slice(20),
  ].join('-');
}

/** 40 hexadecimal characters. */
export function sha1OfText(text: string): string {
  return hexOf(sha1([...strToU8(text)]));
}

/** FIPS 180-4, section 6.1. For telling things apart, never for keeping a secret. */
function sha1(message: readonly number[]): number[] {
  const h = [0x67452301, 0xefcdab89 | 0, 0x98badcfe | 0, 0x10325476, 0xc3d2e1f0 | 0];
  const padded = padTo64(message);
  const w = new Int32Array(80);
  for (let block = 0; block < padded.length; block += 64) {
    for (let t = 0; t < 80; t++) {
      w[t] =
        t < 16
          ? wordAt(padded, block + 4 * t)
          : turn(at(w, t - 3) ^ at(w, t - 8) ^ at(w, t - 14) ^ at(w, t - 16), 1);
    }
    let [a = 0, b = 0, c = 0, d = 0, e = 0] = h;
    for (let t = 0; t < 80; t++) {
      const next = (turn(a, 5) + mixed(t, b, c, d) + e + at(w, t)) | 0;
      [a, b, c, d, e] = [next, a, turn(b, 30), c, d];
    }
    for (const [i, word] of [a, b, c, d, e].entries()) h[i] = ((h[i] ?? 0) + word) | 0;
  }
  return h.flatMap((word) => [word >>> 24, (word >>> 16) & 0xff, (word >>> 8) & 0xff, word & 0xff]);
}

/** The round's function with its constant. */
function mixed(t: number, b: number, c: number, d: number): number {
  if (t < 20) return ((b & c) | (~b & d)) + 0x5a827999;
  if (t < 40) return (b ^ c ^ d) + 0x6ed9eba1;
  if (t < 60) return ((b & c) | (b & d) | (c & d)) + 0x8f1bbcdc;
  return (b ^ c ^ d) + 0xca62c1d6;
}

function padTo64(message: readonly number[]): number[] {
  const padded = [...message, 0x80];
  while (padded.length % 64 !== 56) padded.push(0);
  const bits = message.length * 8;
  for (let shift = 56; shift >= 0; shift -= 8) {
    padded.push(shift >= 32 ? Math.floor(bits / 4294967296) >>> (shift - 32) : bits >>> shift);
  }
  return padded.map((byte) => byte & 0xff);
}

function wordAt(bytes: readonly number[], i: number): number {
  const [a = 0, b = 0, c = 0, d = 0] = bytes.slice(i, i + 4);
  return (a << 24) | (b << 16) | (c << 8) | d;
}

function at(words: Int32Array, i: number): number {
  return words[i] ?? 0;
}

function turn(word: number, by: number): number {
  return (word << by) | (word >>> (32 - by));
}

function hexOf(bytes: readonly number[]): string {
  return bytes.map((byte) => byte.toString(16).padStart(2, '0')).join('');
}

function bytesOfHex(hex: string): number[] {
  return (hex.match(/../g) ?? []).map((pair) => Number.parseInt(pair, 16));
}
