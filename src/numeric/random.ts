import { exactLog } from './exponential.ts';
import { scramble, seedFromText } from './seed.ts';

const TWO_TO_MINUS_53 = 1 / 9007199254740992;
const WARM_UP = 12;

/** State of one random stream: four words of 32 bits, plain data that may be copied to keep a place. */
export interface RandomState {
  a: number;
  b: number;
  c: number;
  d: number;
}

/**
 * A stream of random numbers: the small fast counting generator of 128 bits (sfc32; C. Doty-Humphrey,
 * PractRand), period at least 2³².
 *
 * Streams of one seed are independent, so a component that draws more often disturbs no other.
 *
 * @param seed any number; only its value as a whole 53-bit integer counts
 * @param stream name or number of the stream
 */
export function createRandom(seed: number, stream: string | number = 0): RandomState {
  const whole = Math.floor(Math.abs(seed));
  const low = whole % 4294967296;
  const high = Math.floor(whole / 4294967296) + (seed < 0 ? 0x80000000 : 0);
  const lane = typeof stream === 'string' ? seedFromText(stream) : scramble(stream ^ 0x5bf03635);
  const state: RandomState = {
    a: scramble(low ^ lane) | 0,
    b: scramble(high + Math.imul(lane, 0x9e3779b1)) | 0,
    c: scramble(low + 0x7f4a7c15) | 0,
    d: 1,
  };
  for (let i = 0; i < WARM_UP; i++) nextWord(state);
  return state;
}

/** The next 32 random bits, 0…2³²−1. */
export function nextWord(state: RandomState): number {
  const sum = (state.a + state.b + state.d) | 0;
  state.d = (state.d + 1) | 0;
  state.a = state.b ^ (state.b >>> 9);
  state.b = (state.c + (state.c << 3)) | 0;
  state.c = (((state.c << 21) | (state.c >>> 11)) + sum) | 0;
  return sum >>> 0;
}

/** Uniform in [0, 1), 53 random bits. */
export function nextUniform(state: RandomState): number {
  const high = nextWord(state) >>> 5;
  const low = nextWord(state) >>> 6;
  return (high * 67108864 + low) * TWO_TO_MINUS_53;
}

/** Normal with mean 0 and deviation 1, by Marsaglia's polar method. */
export function nextNormal(state: RandomState): number {
  for (;;) {
    const u = 2 * nextUniform(state) - 1;
    const v = 2 * nextUniform(state) - 1;
    const s = u * u + v * v;
    if (s > 0 && s < 1) return u * Math.sqrt((-2 * exactLog(s)) / s);
  }
}

/** The same things as chance puts them, every order as likely (Fisher and Yates). */
export function shuffled<T>(of: readonly T[], state: RandomState): T[] {
  const mixed = [...of];
  for (let i = mixed.length - 1; i > 0; i--) {
    const j = Math.floor(nextUniform(state) * (i + 1));
    const held = mixed[i] as T;
    mixed[i] = mixed[j] as T;
    mixed[j] = held;
  }
  return mixed;
}
