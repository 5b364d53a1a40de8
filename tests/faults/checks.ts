/**
 * Which checks would show a difference between two runs of one plant: found by comparing what each
 * check reads, never declared by a fault.
 */
import type { Run } from '../../src/engine/index.ts';

export type Check =
  | 'look'
  | 'panel and history'
  | 'start chart'
  | 'pressure at a test point'
  | 'flame signal'
  | 'flue gas'
  | 'leak or flow test'
  | 'stroke or strobe'
  | 'meter';

/** Frames are 0.1 s: every fifth is fine enough to see anything that moved. */
const EVERY = 5;
/** An instrument resolves this share of its reading and of its unit. */
const NOISE = 1e-3;

const BY_CHANNEL: readonly (readonly [RegExp, Check])[] = [
  [/^logic\.|^firing\.|^furnace\.air-changes|^vessel\.load/, 'panel and history'],
  [/^wiring\./, 'meter'],
  [
    /^gas\..*\.pressure$|^air\..*\.pressure$|^air\.head|^furnace\.pressure|^stack\./,
    'pressure at a test point',
  ],
  [/^flame\.signal$/, 'flame signal'],
  [/^analyser\.|^flue\.|^efficiency\./, 'flue gas'],
  [/^gas\..*\.flow$|^air\.flow$/, 'leak or flow test'],
  [/^damper\.|^fuel-valve\.|^fan\./, 'stroke or strobe'],
];

/** Each check that shows a difference, with the first reading that does and its time. */
export function checksThatShow(sound: Run, faulty: Run): Map<Check, string> {
  const shown = new Map<Check, string>();
  const places = sound.channels.flatMap((channel, i) =>
    channel.part === 'visible' ? [{ i, channel, check: checkOf(channel.id) }] : [],
  );
  const frames = Math.min(sound.frameCount(), faulty.frameCount());
  for (let k = 0; k < frames; k += EVERY) {
    const a = sound.frame(k);
    const b = faulty.frame(k);
    for (const { i, channel, check } of places) {
      if (shown.has(check)) continue;
      const x = a[i] as number;
      const y = b[i] as number;
      const noise = channel.kind === 'word' ? 0 : NOISE * (1 + Math.abs(x));
      if (Math.abs(x - y) > noise)
        shown.set(check, `${channel.id} at ${(k * sound.frameS).toFixed(1)} s`);
    }
  }
  const events = (run: Run) =>
    run.events().flatMap((event) => (event.type === 'fault' ? [] : [JSON.stringify(event)]));
  const before = events(sound);
  const other = events(faulty).find((event, i) => event !== before[i]);
  if (other !== undefined) shown.set('start chart', other);
  return shown;
}

function checkOf(id: string): Check {
  return BY_CHANNEL.find(([pattern]) => pattern.test(id))?.[1] ?? 'look';
}
