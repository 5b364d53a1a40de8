import { type ChannelIndex, readAt } from '../channels.ts';
import { BITS_A_WORD } from '../packed-bits.ts';
import type { SchematicPlant } from './plant.ts';

/** A motor on the mains draws at least its magnetising current. */
const FED_A = 0.1;

/**
 * Whether the fan's contactor is in, by the recorded wiring: a dead motor behind it draws nothing.
 * A run without that record is judged by the motor's current.
 */
export function contactorReader(
  plant: SchematicPlant,
  channels: ChannelIndex,
): (frame: Float64Array) => boolean {
  const place = plant.contactorPlace ?? -1;
  const word = channels.indexOf(`wiring.made.${Math.floor(place / BITS_A_WORD)}`);
  if (place < 0 || word < 0) {
    const current = channels.indexOf('fan.current');
    return (frame) => readAt(frame, current) > FED_A;
  }
  const bit = 1 << (place % BITS_A_WORD);
  return (frame) => (readAt(frame, word) & bit) !== 0;
}
