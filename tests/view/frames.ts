import type { Channel, Vocabulary } from '../../src/view/index.ts';

export const vocabulary: Vocabulary = {
  steps: ['standby', 'drive to purge', 'purge', 'lockout'],
  commands: [
    'fan',
    'spark',
    'pilotValve',
    'upstreamValve',
    'downstreamValve',
    'ventValve',
    'alarm',
  ],
  inputs: ['airProved', 'flame', 'upstreamValveClosed', 'downstreamValveClosed', 'damperAtPurge'],
  targets: ['rest', 'purge'],
};

const PRESSURES = ['inlet', 'regulated', 'interspace', 'manifold', 'pilot'];
const EDGES = [
  'cock',
  'upstream-valve',
  'vent-valve',
  'downstream-valve',
  'fuel-valve',
  'pilot-valve',
];

export const channels: readonly Channel[] = [
  ...PRESSURES.map((id) => ({ id: `gas.${id}.pressure`, unit: 'Pa' })),
  ...EDGES.map((id) => ({ id: `gas.${id}.flow`, unit: 'kg/s' })),
  ...EDGES.map((id) => ({ id: `gas.${id}.opening`, unit: '1' })),
  { id: 'air.flow', unit: 'kg/s' },
  { id: 'air.windbox.pressure', unit: 'Pa' },
  { id: 'air.head.differential', unit: 'Pa' },
  { id: 'fan.speed', unit: 'rpm' },
  { id: 'fan.frequency', unit: 'Hz' },
  { id: 'damper.target', unit: '°' },
  { id: 'damper.feedback', unit: '°' },
  { id: 'damper.blade', unit: '°' },
  { id: 'fuel-valve.target', unit: '°' },
  { id: 'fuel-valve.feedback', unit: '°' },
  { id: 'furnace.air-changes', unit: '1' },
  { id: 'furnace.combustible', unit: '1' },
  { id: 'flue.temperature', unit: 'K' },
  { id: 'spark.power', unit: 'W' },
  { id: 'pilot.intensity', unit: '1' },
  { id: 'main.intensity', unit: '1' },
  { id: 'flame.signal', unit: 'µA' },
  { id: 'vessel.pressure', unit: 'Pa' },
  { id: 'vessel.level', unit: 'm' },
  { id: 'vessel.temperature', unit: 'K' },
  { id: 'vessel.return-temperature', unit: 'K' },
  { id: 'vessel.circulation', unit: 'kg/s' },
  { id: 'fan.current', unit: 'A' },
  { id: 'logic.inputs', unit: '1' },
  { id: 'logic.commands', unit: '1' },
  { id: 'logic.step', unit: '1' },
];

/** A frame with the values given and zero for the rest; an unknown channel is a mistake. */
export function frameWith(values: Readonly<Record<string, number>>): Float64Array {
  const frame = new Float64Array(channels.length);
  for (const [id, value] of Object.entries(values)) {
    const place = channels.findIndex((channel) => channel.id === id);
    if (place < 0) throw new Error(`no channel ${id}`);
    frame[place] = value;
  }
  return frame;
}

export function wordOf(names: readonly string[], ...set: string[]): number {
  return set.reduce((word, name) => word | (1 << names.indexOf(name)), 0);
}
