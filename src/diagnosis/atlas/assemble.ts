import type { ChannelInfo } from '../../engine/index.ts';
import { checkName } from '../observe/reading.ts';
import type { Cause } from '../reasoning/particles.ts';
import type { Atlas } from './atlas.ts';
import { sortSamples } from './sort-samples.ts';
import { keyName, type Sample } from './take-sample.ts';

/** All samples of one cause. */
export interface CauseSamples extends Cause {
  readonly samples: readonly { readonly severity: number; readonly readings: Sample }[];
}

/** @param sound the samples of sound plants, then those of each fault */
export function assembleAtlas(
  plant: string,
  fingerprint: string,
  channels: readonly ChannelInfo[],
  sound: CauseSamples,
  faults: readonly CauseSamples[],
): Atlas {
  const all = [sound, ...faults];
  const samples = all.flatMap((one) => one.samples);
  const kinds = new Map(channels.map(({ id, kind }) => [id, kind] as const));
  const causeOf = Uint16Array.from(all.flatMap((one, cause) => one.samples.map(() => cause)));
  return {
    plant,
    fingerprint,
    causes: all.map(({ fault, priorWeight }) => ({ fault, priorWeight })),
    causeOf,
    keys: sortSamples(
      samples.map(({ readings }) => readings),
      causeOf,
      (channel) => kinds.get(channel) ?? null,
    ),
    severities: samples.map(({ severity }) => severity),
    reachedS: reachedBy(sound.samples[0]?.readings),
  };
}

/** From the durations of the first sound start, in the order in which its steps were passed. */
function reachedBy(sound: Sample | undefined): Record<string, number> {
  const reached: Record<string, number> = {};
  let t = 0;
  for (const [name, value] of sound ?? []) {
    if (!name.startsWith(`${checkName('watch one start')}@`) || !name.endsWith('#duration'))
      continue;
    const moment = name.slice(name.indexOf('@') + 1, name.indexOf('#'));
    if (keyName(checkName('watch one start'), moment, 'duration') !== name) continue;
    t += value as number;
    reached[moment] = Math.round(10 * t) / 10;
  }
  return reached;
}
