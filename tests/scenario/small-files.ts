import { readFileSync } from 'node:fs';
import { timingParameters } from '../../machines/burner/index.ts';
import type { FaultLimits } from '../../src/scenario/fault-checks.ts';
import { plantSchema } from '../../src/scenario/plant-schema.ts';
import { readYaml } from '../../src/scenario/read-yaml.ts';

/** A scenario that is in order; the tests break it in one place each. */
export const SOUND_SCENARIO = `id: small-start
title: A small start
plant: dairy
summary: Nothing is wrong here.
initial: { pressureBar: 8, levelMm: 0, load: 0.2 }
load:
  - { at: 100, load: 0.4 }
faults:
  - { fault: lens dirty, severity: 0.9, onset: { at: 3 } }
actions:
  - { at: 5, do: call-for-heat, on: true }
until: 300
expect:
  reaches: modulation
  lockout: none
  by: 240
`;

/** Replaces what must be there exactly once, so that a broken file is broken where it says. */
export function broken(text: string, from: string, to: string): string {
  const parts = text.split(from);
  if (parts.length !== 2) throw new Error(`"${from}" is there ${parts.length - 1} times`);
  return parts.join(to);
}

/** A profile of least values: these tests are about files, not about times. */
export const SOUND_PROFILE = JSON.stringify(
  {
    id: 'short-times',
    title: 'Short times',
    description: 'As short as the table lets them be.',
    timings: Object.fromEntries(
      Object.entries(timingParameters).map(([name, parameter]) => [
        name,
        parameter.kind === 'number' ? parameter.min : parameter.options[0],
      ]),
    ),
  },
  null,
  2,
);

// biome-ignore lint/suspicious/noExplicitAny: tests put in what no plant may hold
export type LoosePlant = any;

/** The shipped plant as data, run by the profile above, to be changed at will. */
export function soundPlant(): LoosePlant {
  const text = readFileSync(new URL('../../scenarios/plants/dairy.yaml', import.meta.url), 'utf8');
  const read = readYaml(text, 'dairy.yaml', plantSchema);
  if (!read.ok) throw new Error(JSON.stringify(read.issues, null, 1));
  return { ...structuredClone(read.value), profile: 'short-times' };
}

export const SMALL_CATALOGUE: readonly FaultLimits[] = [
  {
    id: 'lens dirty',
    severity: { unit: '1', low: 0.3, high: 0.99 },
    onsets: ['start', 'time', 'step'],
    appliesTo: () => true,
  },
  {
    id: 'upstream valve seat passes',
    severity: { unit: 'dm³/h', low: 20, high: 4000 },
    onsets: ['start', 'time', 'step', 'intermittent'],
    appliesTo: () => true,
  },
  {
    id: 'flame rod fouled',
    severity: { unit: 'Ω', low: 1e7, high: 5e9 },
    onsets: ['start'],
    appliesTo: () => false,
  },
];

export function smallLibrary(scenario = SOUND_SCENARIO, plant = soundPlant()) {
  return [
    { path: 'plants/dairy.json', text: JSON.stringify(plant, null, 2) },
    { path: 'profiles/short-times.json', text: SOUND_PROFILE },
    { path: 'starts/small-start.yaml', text: scenario },
  ];
}
