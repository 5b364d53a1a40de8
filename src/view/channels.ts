/** What the recorder keeps, as far as a view needs to know it. */
export interface Channel {
  readonly id: string;
  readonly unit: string;
}

/** Where a channel stands in a frame; `indexOf` gives -1 for one the run does not have. */
export interface ChannelIndex {
  readonly list: readonly Channel[];
  indexOf(id: string): number;
  unitOf(id: string): string;
}

export function indexChannels(list: readonly Channel[]): ChannelIndex {
  const places = new Map(list.map((channel, place) => [channel.id, place]));
  return {
    list,
    indexOf: (id) => places.get(id) ?? -1,
    unitOf: (id) => {
      const place = places.get(id);
      return place === undefined ? '1' : list[place].unit;
    },
  };
}

/** A reading of a frame; a channel the run does not have reads as `missing`. */
export function readAt(frame: Float64Array, place: number, missing = 0): number {
  return place < 0 || place >= frame.length ? missing : frame[place];
}
