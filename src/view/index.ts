export type { Channel } from './channels.ts';
export { tallestChartPx } from './chart/geometry.ts';
export { createStartChart } from './chart/index.ts';
export { type Lane, lanesOf } from './chart/lanes.ts';
export type { ChartScale, StartChart, StartChartOptions } from './chart/types.ts';
export type { CloseUpDrawing, CloseUpOptions } from './close-up/types.ts';
export type { HeldLeads, Lead, LeadPlaces } from './ladder/leads.ts';
export type { LadderPlace } from './ladder/places.ts';
export type { RungText } from './ladder/rung-words.ts';
export type {
  Ladder,
  LadderElement,
  LadderOptions,
  LadderStep,
  LadderTag,
  LadderWiring,
  SymbolSetName,
} from './ladder/types.ts';
export type { Message, MessageParams, Reading } from './message.ts';
export type { Theme } from './palette.ts';
export { siReading } from './reading.ts';
export type { SchematicPlant } from './schematic/plant.ts';
export type {
  ItemTag,
  ListedItem,
  Schematic,
  SchematicOptions,
  SchematicPoint,
} from './schematic/types.ts';
export { createSound } from './sound/index.ts';
export type { Caption, Sound, SoundName, SoundOptions } from './sound/types.ts';
export type { Trends, TrendsOptions } from './trends/types.ts';
export type { Vocabulary } from './vocabulary.ts';

/** The drawing brings Pixi with it: fetched when it is wanted. */
export function loadSchematic() {
  return import('./schematic/index.ts');
}

/** The ladder, drawn and in words, is fetched when its tab is opened. */
export function loadLadder() {
  return import('./ladder/index.ts');
}

/** What eyes find at one place, drawn large. */
export function loadCloseUp() {
  return import('./close-up/index.ts');
}

/** The trends drawer brings uPlot with it. */
export function loadTrends() {
  return import('./trends/index.ts');
}
