import {
  BITS_A_WORD,
  describeWiring,
  type PlantFile,
  type Run,
  type WiringDescription,
} from '../../engine/index.ts';

/** Less than this is not felt, and what is below is dead, V. */
export const DEAD_V = 30;

export interface WireBits {
  readonly plant: PlantFile;
  readonly wiring: WiringDescription;
  /** Places of the words in a frame. */
  readonly words: readonly number[];
}

export function wireBitsOf(run: Run): WireBits {
  const wiring = describeWiring(run.setup.plant);
  const words: number[] = [];
  run.channels.forEach(({ id }, place) => {
    if (id.startsWith('wiring.live.')) words.push(place);
  });
  return { plant: run.setup.plant, wiring, words };
}

/** Whether the wire at this place stands under the volts of its supply. */
export function isLive(bits: WireBits, frame: Float64Array, place: string): boolean {
  const at = bits.wiring.wires.indexOf(wireOf(bits, place));
  if (at < 0) return false;
  const word = frame[bits.words[Math.floor(at / BITS_A_WORD)] ?? -1] ?? 0;
  return ((word >> (at % BITS_A_WORD)) & 1) === 1;
}

export function wireOf({ wiring, plant }: WireBits, place: string): string {
  const [name, end] = place.split(/:(?=[12]$)/);
  if (end === undefined) return place;
  const element = wiring.elements.find((one) => one.name === name);
  if (element !== undefined) return end === '1' ? element.from : element.to;
  const source = plant.wiring.sources.find(({ id }) => id === name);
  return (end === '1' ? source?.live : source?.neutral) ?? place;
}

/** Volts between two places now; 0 where one of them is not there. */
export function voltsBetween(run: Run, from: string, to: string): number {
  return Math.abs(run.meter({ kind: 'volts', from, to })?.value ?? 0);
}
