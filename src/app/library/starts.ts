import library from 'virtual:library';

export interface Start {
  readonly id: string;
  readonly title: string;
  readonly summary: string;
  /** What is worth looking at; never which fault it is. */
  readonly teaches: string;
}

/** A plant with its starts: those with nothing wrong, the plainest first, and the others by title. */
export interface PlantStarts {
  readonly plant: string;
  readonly title: string;
  readonly description: string;
  readonly healthy: readonly Start[];
  readonly troubled: readonly Start[];
}

/** The plants to choose from; the one with most starts first. */
export function startsByPlant(): PlantStarts[] {
  return library.plants
    .map(({ id, title, description }) => ({
      plant: id,
      title,
      description,
      ...startsOf((scenario) => scenario.plant === id),
    }))
    .filter(({ healthy, troubled }) => healthy.length + troubled.length > 0)
    .sort((a, b) => countOf(b) - countOf(a) || a.title.localeCompare(b.title));
}

/** Every start of the library, whatever its plant. */
export function startsOfLibrary(): { readonly healthy: Start[]; readonly troubled: Start[] } {
  return startsOf(() => true);
}

type Scenario = (typeof library.scenarios)[number];

function startsOf(isWanted: (scenario: Scenario) => boolean) {
  const healthy: Start[] = [];
  const troubled: Start[] = [];
  for (const scenario of library.scenarios.filter(isWanted)) {
    const { id, title, summary, teaches, faults, actions } = scenario;
    const sound =
      faults.length === 0 && actions.every(({ do: act }) => !PUTS_IN_FAULTS.includes(act));
    (sound ? healthy : troubled).push({ id, title, summary, teaches: teaches ?? '' });
  }
  healthy.sort((a, b) => rank(a) - rank(b) || a.title.localeCompare(b.title));
  troubled.sort((a, b) => a.title.localeCompare(b.title));
  return { healthy, troubled };
}

/** Written out: lists are shown without the engine. */
const PUTS_IN_FAULTS = ['insert-fault', 'ramp-fault', 'intermittent-fault'];

function countOf({ healthy, troubled }: PlantStarts): number {
  return healthy.length + troubled.length;
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

/** The plain healthy start of a plant goes before its other starts with nothing wrong. */
function rank({ id }: Start): number {
  if (id === 'healthy-start') return 0;
  return id.endsWith('healthy-start') ? 1 : 2;
}
