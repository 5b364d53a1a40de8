import type { ChannelIndex } from '../channels.ts';
import { shortName } from './item-names.ts';
import { nameLine } from './label-lines.ts';
import type { LabelSpec } from './labels.ts';
import type { SchematicPlant } from './plant.ts';
import type { Words } from './words.ts';

/** What is seen from where one stands: dials and glass on the vessel, that the fan turns. */
const SEEN = new Set([
  'vessel.pressure',
  'vessel.gauge-glass',
  'vessel.temperature',
  'vessel.return-temperature',
  'fan.speed',
]);
/** Labels that read such a dial. */
const DIALS = new Set(['steam', 'level', 'return']);
const TEST_POINT = 'test-point:';
const LEGEND = 'legend:';

/** The channels without those that only an instrument or the simulator has: a drawing made with it is at rest. */
export function eyesIndex(all: ChannelIndex, plant: SchematicPlant): ChannelIndex {
  const handles = plant.gasTrain.edges.filter(({ kind }) => kind === 'cock');
  const seen = new Set([...SEEN, ...handles.map(({ id }) => `gas.${id}.opening`)]);
  return { ...all, indexOf: (id) => (seen.has(id) ? all.indexOf(id) : -1) };
}

/** Labels that give names only, but for the dials and the handles of the cocks. */
export function eyesLabels(
  specs: ReadonlyMap<string, LabelSpec>,
  plant: SchematicPlant,
  words: Words,
): ReadonlyMap<string, LabelSpec> {
  const cocks = new Set(
    plant.gasTrain.edges.filter(({ kind }) => kind === 'cock').map(({ id }) => id),
  );
  // What colours and marks mean is of no use where nothing is coloured and nothing moves.
  const told = [...specs].filter(([id]) => !id.startsWith(LEGEND));
  const named = told.map(([id, spec]): [string, LabelSpec] => {
    if (DIALS.has(id) || cocks.has(id)) return [id, spec];
    if (id.startsWith(TEST_POINT)) return [id, { id, lines: [] }];
    const fixed = spec.lines.filter((line) => line.fixed === true);
    const lines = fixed.length > 0 ? fixed : [nameLine(nameAtRest(id, words))];
    return [id, { id, lines }];
  });
  return new Map(named);
}

/** What has no reading is named by what it is, not by what it reads. */
function nameAtRest(id: string, { message }: Words): string {
  return id === 'flame-sensor' ? message('view.eyes.flame-sensor') : shortName(id, null, message);
}
