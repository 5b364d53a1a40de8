import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { createRun, faultsFor, inputReadings } from '../../src/engine/index.ts';
import { sayMessage } from '../../src/i18n/index.ts';
import { buildLibrary, setupOf } from '../../src/scenario/index.ts';
import { phraseOfIssue } from '../../src/scenario/issue.ts';
import { library } from '../support/library.ts';

/** Quantities that grow with the size of a plant; angles, times, pressures and the like do not. */
const GROWS =
  /(AreaM2|areaM2|surfaceM2|SurfaceM2|VolumeM3|NormalM3|WaterM3|volumeM3|volumeDm3|VolumeDm3|accumulatorM3|expansionVesselM3|bubbleM3|FlowM3S|flowM3S|KgS|[mM]etalKg|ratedTorqueNm|inertiaKgM2|frictionNm|CurrentA|LimitA|refractoryHeatJK|ConductanceWK|tileToWaterWK|heatLossW|ratedHeatW|ventAreaM2|drumVolumeM3|drumNormalM3)$/;
/** What has a size of its own: electrical parts, and the gas of a leak. */
const STAYS = new Set(['wiring', 'ignition']);

/** Ids that an instructor may choose: those of everything that hangs on wires but the loads with a meaning. */
const FREE_LISTS = [
  'relays',
  'servos',
  'drives',
  'transmitters',
  'thermometers',
  'switches',
  'temperatureSwitches',
  'interspaceComparators',
  'closedProofs',
  'levelProbes',
  'waterCutOffs',
  'feedControls',
  'timeClocks',
  'remoteContacts',
  'ignitionTransformers',
  'flameSensors',
  'flameRelays',
  'airChangeCounters',
];

// biome-ignore lint/suspicious/noExplicitAny: a plant as a text editor sees it
type Loose = any;

/** A copy of a plant's text as an instructor would make it: another id, another size, other names. */
function copyOf(plant: string, id: string, size: number): Loose {
  const text = readFileSync(
    new URL(`../../scenarios/plants/${plant}.yaml`, import.meta.url),
    'utf8',
  );
  const copy = scaled(parse(text), size);
  copy.id = id;
  copy.title = `The ${id}`;
  const renamed = new Map<string, string>();
  for (const list of FREE_LISTS) {
    (copy.field[list] ?? []).forEach((device: { id: string }, i: number) => {
      const name = renamed.get(device.id) ?? `${list.toLowerCase()}-${i + 1}`;
      renamed.set(device.id, name);
      device.id = name;
    });
  }
  const rename = (name: string) => renamed.get(name) ?? name;
  for (const relay of copy.field.flameRelays) relay.sensor = rename(relay.sensor);
  for (const control of copy.field.feedControls ?? []) control.probe = rename(control.probe);
  for (const load of copy.wiring.loads) load.id = rename(load.id);
  copy.wiring.rungs = copy.wiring.rungs.map((rung: string[]) =>
    rung.map((part, i) => (i % 2 === 0 ? part : renamePart(part, rename))),
  );
  return copy;
}

/** `fan.contactor`, `ai.fan`, `in.damper`: the device's id stands before or behind the point. */
function renamePart(part: string, rename: (name: string) => string): string {
  const [head = '', tail] = part.split('.');
  if (tail === undefined) return rename(head);
  return head === 'ai' || head === 'ao' || head === 'in'
    ? `${head}.${rename(tail)}`
    : `${rename(head)}.${tail}`;
}

function scaled(value: Loose, size: number): Loose {
  if (Array.isArray(value)) return value.map((one) => scaled(one, size));
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value).map(([key, one]) => {
      if (STAYS.has(key)) return [key, one];
      if (typeof one === 'number' && GROWS.test(key)) return [key, one * size];
      return [key, scaled(one, size)];
    }),
  );
}

const COPIES: readonly (readonly [string, string, number])[] = [
  ['dairy', 'brewery', 0.7],
  ['laundry', 'bakery', 1.6],
  ['school', 'town-hall', 1.4],
];

describe.each(COPIES)('a plant written by copying the %s', (plant, id, size) => {
  const scenario = library.scenarios.find(
    (one) => one.plant === plant && one.expect.reaches === 'modulation' && one.faults.length === 0,
  );
  const built = buildLibrary(
    [
      { path: `plants/${id}.json`, text: JSON.stringify(copyOf(plant, id, size), null, 1) },
      {
        path: `starts/${id}-start.json`,
        text: JSON.stringify({ ...scenario, id: `${id}-start`, plant: id }),
      },
    ],
    { base: library },
  );

  it('is a plant by every check', () => {
    expect(built.ok ? [] : built.issues.map((issue) => sayMessage(phraseOfIssue(issue)))).toEqual(
      [],
    );
  });

  it('starts to modulation and burns cleanly, without a line of code for it', () => {
    if (!built.ok) throw new Error('not built');
    const setup = setupOf(built.value, `${id}-start`);
    if (setup === null) throw new Error('no setup');
    const run = createRun(setup);
    run.advanceTo(310);
    expect(run.status()).toMatchObject({ step: 'modulation', lockout: null });
    const oxygen = run.channels.findIndex((channel) => channel.id === 'flue.oxygen');
    const last = run.frame(run.frameCount() - 1);
    expect(last[oxygen]).toBeGreaterThan(0.02);
    expect(last[oxygen]).toBeLessThan(0.07);
  });

  it('shows a reading that is recorded behind each of its inputs', () => {
    if (!built.ok) throw new Error('not built');
    const setup = setupOf(built.value, `${id}-start`);
    if (setup === null) throw new Error('no setup');
    const recorded = new Set(createRun(setup).channels.map((channel) => channel.id));
    for (const { channel } of Object.values(inputReadings(setup.plant, setup.profile))) {
      if (channel !== null) expect(recorded).toContain(channel);
    }
  });

  it('can have the same faults as the plant it was copied from', () => {
    if (!built.ok) throw new Error('not built');
    const idsFor = (which: string) => {
      const found = built.value.plants.find((one) => one.id === which);
      return found === undefined ? [] : faultsFor(found).map((fault) => fault.id);
    };
    expect(idsFor(id)).toEqual(idsFor(plant));
    expect(idsFor(id).length).toBeGreaterThan(30);
  });
});
