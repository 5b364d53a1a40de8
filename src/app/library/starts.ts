import library from 'virtual:library';

export interface Start {
  readonly id: string;
  readonly title: string;
  readonly summary: string;
}

/** The starts to choose from: those with nothing wrong first, the rest by title. */
export function startsOfLibrary(): { readonly healthy: Start[]; readonly troubled: Start[] } {
  const healthy: Start[] = [];
  const troubled: Start[] = [];
  for (const { id, title, summary, faults, actions } of library.scenarios) {
    const sound = faults.length === 0 && actions.every(({ do: act }) => act !== 'insert-fault');
    (sound ? healthy : troubled).push({ id, title, summary });
  }
  healthy.sort((a, b) => rank(a) - rank(b) || a.title.localeCompare(b.title));
  troubled.sort((a, b) => a.title.localeCompare(b.title));
  return { healthy, troubled };
}

/** How many starts there are to be surprised by. */
export function countBlind(): number {
  return startsOfLibrary().troubled.length;
}

/** Numbers run through the starts with something wrong in an order that no list shows. */
export function blindStart(number: number): string {
  const { troubled } = startsOfLibrary();
  const start = troubled[scattered(number, troubled.length)];
  return start?.id ?? '';
}

/** Each number below `count` once, neighbours far apart. */
export function scattered(number: number, count: number): number {
  let stride = Math.max(1, Math.floor(count * 0.618));
  while (greatestCommon(stride, count) > 1) stride += 1;
  return (number * stride) % Math.max(1, count);
}

function greatestCommon(a: number, b: number): number {
  return b === 0 ? a : greatestCommon(b, a % b);
}

function rank(start: Start): number {
  return start.id === 'healthy-start' ? 0 : 1;
}
