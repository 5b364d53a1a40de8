import { say, sayWord } from '../../i18n/index.ts';
import { formatQuantity, type QuantityKind, type UnitSystem } from '../../quantity/index.ts';
import type { Facts } from '../session/protocol.ts';
import { channelName } from './channel-name.ts';
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
    { title: say('app.list.vessel'), items: plainItems(facts, visible, VESSEL) },
    { title: say('app.list.proofs'), items: proofItems(facts) },
  ];
  return groups.filter(({ items }) => items.length > 0);
}

const AIR = [
  'fan.speed',
  'fan.frequency',
  'fan.current',
  'damper.target',
  'damper.feedback',
  'damper.blade',
  'air.flow',
  'air.windbox.pressure',
  'air.head.differential',
] as const;
const FLAME = [
  'spark.power',
  'pilot.intensity',
  'main.intensity',
  'flame.signal',
  'furnace.air-changes',
  'furnace.pressure',
  'furnace.temperature',
  'flue.temperature',
  'flue.oxygen',
] as const;
const VESSEL = [
  'vessel.pressure',
  'vessel.level',
  'vessel.steam',
  'vessel.load',
  'firing.rate',
  'fuel-valve.target',
  'fuel-valve.feedback',
  'fuel-valve.blade',
] as const;

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
        if (what !== 'opening') return formatQuantity(value, kind, units);
        return withFlow(openingText(value), flowText(facts, frame, place, units));
      },
      cock: facts.cocks.find(({ channel }) => channel === id) ?? null,
    };
  }
}

function plainItems(
  facts: Facts,
  visible: Visible,
  ids: readonly (typeof AIR | typeof FLAME | typeof VESSEL)[number][],
): EquipmentItem[] {
  return ids
    .filter((id) => visible.has(id))
    .map((id) => ({
      id,
      name: say(`app.channel.${id}`),
      state: (frame, units) =>
        formatQuantity(readChannel(facts, frame, id) ?? 0, visible.get(id) ?? 'number', units),
      cock: null,
    }));
}

/** What the controller is told at its terminals. */
function proofItems(facts: Facts): EquipmentItem[] {
  return facts.inputs.map((input, bit) => ({
    id: `input.${input}`,
    name: say('app.list.terminal', { place: bit + 1 }),
    state: (frame) => {
      const word = readChannel(facts, frame, 'logic.inputs') ?? 0;
      return sayWord('input', input, (word & (1 << bit)) === 0 ? '.not' : '');
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
  return flow === null || Math.abs(flow) < 1e-6 ? '' : formatQuantity(flow, 'gas flow', units);
}

function withFlow(state: string, flow: string): string {
  return flow === '' ? state : say('app.list.with-flow', { state, flow });
}

function words(id: string): string {
  return id.replace(/-/g, ' ');
}
