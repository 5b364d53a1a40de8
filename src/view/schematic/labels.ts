import { contactorReader } from './contactor-state.ts';
import { shortName } from './item-names.ts';
import {
  askedLine,
  combustibleLine,
  countLine,
  eitherLine,
  type LabelLine,
  nameLine,
  positionLine,
  presenceLine,
  proofLine,
  provedReadingLine,
  readingLine,
  valveLine,
} from './label-lines.ts';
import { LEGEND_MEDIA, LEGEND_NOTES } from './layout.ts';
import { testPointId } from './layout-parts.ts';
import type { SchematicPlant, TrainEdge } from './plant.ts';
import { shapeOf } from './train-graph.ts';
import type { Words } from './words.ts';

export interface LabelSpec {
  readonly id: string;
  readonly lines: readonly LabelLine[];
}

/** Values that need the most room, in SI. */
const WIDEST_PA = [28888, -8888];
const WIDEST_VESSEL_PA = [1388888, 88888];
const SPARK_SEEN_W = 1;
/** What the glass shows is not quite the level: the water in it is colder. */
const GAUGE_GLASS = 'vessel.gauge-glass';

/** Everything the drawing says of a plant, in words and readings. */
export function labelsOf(
  plant: SchematicPlant,
  words: Words,
  teaching: boolean,
): ReadonlyMap<string, LabelSpec> {
  const name = (id: string): string => shortName(id, null, words.message);
  const crowded = pilotFittings(plant);
  const specs: LabelSpec[] = plant.gasTrain.edges
    .filter((edge) => !crowded.has(edge.id))
    .map((edge) => ({ id: edge.id, lines: edgeLines(edge, plant, words) }));
  for (const node of plant.gasTrain.nodes) {
    specs.push({
      id: testPointId(node.id),
      lines: [
        readingLine(
          words,
          `gas.${node.id}.pressure`,
          WIDEST_PA,
          node.id === 'inlet' ? words.message('view.short.gas') : undefined,
        ),
      ],
    });
  }
  specs.push(
    { id: 'fan', lines: [readingLine(words, 'fan.speed', [1888], name('fan'))] },
    ...fanLabels(plant, words),
    {
      id: 'damper',
      lines: [
        nameLine(name(plant.hasOneServo === true ? 'servo' : 'damper')),
        positionLine(words, 'damper.feedback', 'damper.target'),
      ],
    },
    {
      id: 'windbox',
      lines: [nameLine(name('windbox')), readingLine(words, 'air.windbox.pressure', [8888, -888])],
    },
    {
      id: 'air-switch',
      lines: [
        nameLine(name('air-switch')),
        proofLine(words, 'airProved', 'view.proved', 'view.not-proved'),
      ],
    },
    { id: 'spark', lines: [presenceLine(words, 'spark.power', SPARK_SEEN_W, name('spark'))] },
    {
      id: 'flame-sensor',
      lines: [provedReadingLine(words, 'flame.signal', [88.8], 'flame', name('flame-sensor'))],
    },
    {
      id: 'furnace',
      lines: [
        nameLine(name('furnace')),
        countLine(words, 'furnace.air-changes', 'view.air-changes'),
      ],
    },
    {
      id: 'stack',
      lines: [nameLine(name('stack')), readingLine(words, 'flue.temperature', [573])],
    },
    ...vesselLabels(plant, words),
    ...[...LEGEND_MEDIA.map((medium) => `legend:${medium}`), ...LEGEND_NOTES].map((id) => ({
      id,
      lines: [nameLine(words.message(`view.${id.replace(':', '.')}`))],
    })),
  );
  if (teaching) {
    specs.push({
      id: 'teaching',
      lines: [
        nameLine(words.message('view.unburnt-gas-title')),
        combustibleLine(words, 'furnace.combustible'),
      ],
    });
  }
  return new Map(specs.map((spec) => [spec.id, spec]));
}

/** Fittings of a pilot line but for its valves: the symbol must do, there is no room for names. */
function pilotFittings(plant: SchematicPlant): ReadonlySet<string> {
  const { pilots } = shapeOf(plant.gasTrain);
  const edges = pilots.flatMap((branch) => branch.edges);
  return new Set(edges.filter((edge) => edge.kind !== 'shutoff').map((edge) => edge.id));
}

function edgeLines(edge: TrainEdge, plant: SchematicPlant, words: Words): LabelLine[] {
  const name = nameLine(shortName(edge.id, edge.kind, words.message));
  switch (edge.kind) {
    case 'cock':
      return [name, valveLine(words, edge.id, false)];
    case 'shutoff':
      return [name, valveLine(words, edge.id, plant.hasProofOfClosure !== false)];
    case 'control':
      if (plant.hasOneServo === true) return [name, readingLine(words, `${edge.id}.blade`, [88.8])];
      return [
        name,
        readingLine(words, `${edge.id}.feedback`, [88.8]),
        askedLine(words, `${edge.id}.feedback`, `${edge.id}.target`),
      ];
    default:
      return [name];
  }
}

/** What feeds the fan: a drive with its frequency, or a contactor and the motor's current. */
function fanLabels(plant: SchematicPlant, words: Words): LabelSpec[] {
  const name = (id: string): string => shortName(id, null, words.message);
  if (plant.hasVariableSpeedFan) {
    return [{ id: 'drive', lines: [readingLine(words, 'fan.frequency', [58.8], name('drive'))] }];
  }
  return [
    { id: 'motor', lines: [readingLine(words, 'fan.current', [88.8], name('motor'))] },
    {
      id: 'contactor',
      lines: [
        eitherLine(
          words,
          contactorReader(plant, words.channels),
          ['view.contactor.in', 'view.contactor.out'],
          name('contactor'),
        ),
      ],
    },
  ];
}

function vesselLabels(plant: SchematicPlant, words: Words): LabelSpec[] {
  const title = nameLine(words.message(`view.vessel.${plant.vesselKind.replace(' ', '-')}`));
  if (plant.vesselKind === 'hot water') {
    return [
      { id: 'vessel', lines: [title] },
      {
        id: 'steam',
        lines: [readingLine(words, 'vessel.temperature', [383], words.message('view.short.flow'))],
      },
      {
        id: 'return',
        lines: [
          nameLine(words.message('view.short.return')),
          readingLine(words, 'vessel.return-temperature', [383]),
        ],
      },
    ];
  }
  return [
    { id: 'vessel', lines: [title] },
    {
      id: 'steam',
      lines: [
        readingLine(words, 'vessel.pressure', WIDEST_VESSEL_PA, words.message('view.short.steam')),
      ],
    },
    {
      id: 'level',
      lines: [
        nameLine(words.message('view.short.level-gauge')),
        readingLine(
          signed(words),
          words.channels.indexOf(GAUGE_GLASS) < 0 ? 'vessel.level' : GAUGE_GLASS,
          [-0.188],
        ),
      ],
    },
  ];
}

/** Told from a mark, a reading says to which side of it. */
function signed(words: Words): Words {
  return {
    ...words,
    reading(value, unit, channel) {
      const text = words.reading(value, unit, channel);
      return value > 0 && /[1-9]/.test(text) ? `+${text}` : text;
    },
  };
}
