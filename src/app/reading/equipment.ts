import { say, sayWord } from '../../i18n/index.ts';
import type { QuantityKind, UnitSystem } from '../../quantity/index.ts';
import { channelName, quantityText, readingText } from '../../wording/index.ts';
import type { Facts } from '../session/protocol.ts';
import { readChannel } from './waits-at.ts';

export interface EquipmentItem {
  readonly id: string;
  readonly name: string;
  /** Words for its state, from the frame of the moment shown. */
  readonly state: (frame: Float64Array, units: UnitSystem) => string;
  readonly cock: { readonly id: string; readonly channel: string } | null;
}
export interface EquipmentGroup {
  readonly title: string;
  readonly items: readonly EquipmentItem[];
}

type Visible = ReadonlyMap<string, QuantityKind>;

/** Everything the drawing shows, in words: for a screen reader, and for whoever prefers a list. */
export function equipmentOf(facts: Facts): EquipmentGroup[] {
  const visible = new Map(
    facts.channels.filter(({ part }) => part === 'visible').map(({ id, kind }) => [id, kind]),
  );
  const groups = [
    { title: say('app.list.fuel-train'), items: [...gasItems(facts, visible)] },
    { title: say('app.list.air-path'), items: plainItems(facts, visible, AIR) },
    { title: say('app.list.flame'), items: plainItems(facts, visible, FLAME) },
    { title: say('app.list.flue'), items: plainItems(facts, visible, FLUE) },
    { title: say('app.list.vessel'), items: plainItems(facts, visible, VESSEL) },
    { title: say('app.list.proofs'), items: proofItems(facts) },
  ];
  return groups.filter(({ items }) => items.length > 0);
}

/** Groups by where a channel's name begins; what is packed into words is in none. */
const AIR = ['fan', 'damper', 'air'];
const FLAME = ['spark', 'pilot', 'main', 'flame', 'furnace'];
const FLUE = ['flue', 'stack', 'analyser', 'efficiency'];
const VESSEL = ['vessel', 'firing', 'fuel-valve'];

/** Points of the train from the supply on, then what stands between them. */
function* gasItems(facts: Facts, visible: Visible): Generator<EquipmentItem> {
  const points = [...visible].filter(([id]) => /^gas\..*\.pressure$/.test(id)).reverse();
  const movers = [...visible].filter(([id]) => /^gas\..*\.opening$/.test(id));
  for (const [id, kind] of [...points, ...movers]) {
    const [, place = '', what] = id.split('.');
    yield {
      id,
      name: what === 'pressure' ? channelName(id) : words(place),
      state: (frame, units) => {
        const value = readChannel(facts, frame, id) ?? 0;
        if (what !== 'opening') return quantityText(value, kind, units);
        return withFlow(openingText(value), flowText(facts, frame, place, units));
      },
      cock: facts.cocks.find(({ channel }) => channel === id) ?? null,
    };
  }
}

function plainItems(
  facts: Facts,
  visible: Visible,
  beginnings: readonly string[],
): EquipmentItem[] {
  return [...visible]
    .filter(([id, kind]) => kind !== 'word' && beginnings.includes(id.split('.', 1)[0] ?? ''))
    .map(([id, kind]) => ({
      id,
      name: channelName(id),
      state: (frame, units) => readingText(readChannel(facts, frame, id) ?? 0, kind, units, id),
      cock: null,
    }));
}

/** What the controller is told at its terminals. */
function proofItems(facts: Facts): EquipmentItem[] {
  return facts.plantInputs.map((input, place) => ({
    id: `input.${input}`,
    name: say('app.list.terminal', { place: place + 1 }),
    state: (frame) => {
      const word = readChannel(facts, frame, 'logic.inputs') ?? 0;
      const bit = 1 << facts.inputs.indexOf(input);
      return sayWord('input', input, (word & bit) === 0 ? '.not' : '');
    },
    cock: null,
  }));
}

function openingText(opening: number): string {
  if (opening < 0.005) return say('app.list.shut');
  if (opening > 0.995) return say('app.list.open');
  return say('app.list.part-open', { percent: Math.round(opening * 100) });
}

function flowText(facts: Facts, frame: Float64Array, edge: string, units: UnitSystem): string {
  const flow = readChannel(facts, frame, `gas.${edge}.flow`);
  return flow === null || Math.abs(flow) < 1e-6 ? '' : quantityText(flow, 'gas flow', units);
}

function withFlow(state: string, flow: string): string {
  return flow === '' ? state : say('app.list.with-flow', { state, flow });
}

function words(id: string): string {
  return id.replace(/-/g, ' ');
}
