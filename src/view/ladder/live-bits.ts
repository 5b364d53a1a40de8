import { type ChannelIndex, readAt } from '../channels.ts';
import { BITS_A_WORD } from '../packed-bits.ts';

/** Reads a list of bits that is packed over several channels: `wiring.live.0`, `wiring.live.1`, … */
export interface LiveBits {
  readonly count: number;
  isSet(place: number): boolean;
  /** Takes in a frame; true when some bit changed. */
  take(frame: Float64Array): boolean;
}

export function createLiveBits(prefix: string, count: number, channels: ChannelIndex): LiveBits {
  const places = Array.from({ length: Math.ceil(count / BITS_A_WORD) }, (_none, k) =>
    channels.indexOf(`${prefix}.${k}`),
  );
  const words = places.map(() => -1);
  return {
    count,
    isSet(place) {
      const word = place < 0 ? 0 : (words[Math.floor(place / BITS_A_WORD)] ?? 0);
      return word > 0 && (word & (1 << (place % BITS_A_WORD))) !== 0;
    },
    take(frame) {
      let changed = false;
      for (let k = 0; k < places.length; k += 1) {
        const next = readAt(frame, places[k]);
        if (next !== words[k]) {
          words[k] = next;
          changed = true;
        }
      }
      return changed;
    },
  };
}
