/** A small atlas of the school, from a few of its faults, by the same ways as the large ones. */
import { describe, expect, it } from 'vitest';
import { createToolState, readTool } from '../../src/bench/index.ts';
import {
  afterSeeing,
  assembleAtlas,
  type CauseSamples,
  decodeAtlas,
  effectOf,
  encodeAtlas,
  keyPlacesOf,
  lookReadings,
  observationsOf,
  planOf,
  priorBelief,
  questionCost,
  questionMinutes,
  questionsOf,
  rankedSuspects,
  sampleOfCase,
  samplesOf,
  scripted,
  toolFor,
  toolReadings,
  withPlant,
} from '../../src/diagnosis/index.ts';
import { createRun, type RunSetup } from '../../src/engine/index.ts';
import { type Fault, findFault } from '../../src/faults/index.ts';
import { shippedSetup } from '../support/library.ts';

const sound = shippedSetup('school-healthy-start');
const plan = planOf(sound);

function fault(id: string): Fault {
  const found = findFault(id);
  if (found === undefined) throw new Error(`no fault ${id}`);
  return found;
}
const FAULTS = [
  'ignition transformer dead',
  'downstream valve coil open',
  'low-gas switch contact open',
  'low-gas switch drifted up',
  'fan turning backwards',
].map(fault);

const soundSamples = samplesOf(plan, null, 6);
const faultSamples = FAULTS.map((one): CauseSamples => {
  const samples = samplesOf(plan, one, 2);
  return { fault: one.id, priorWeight: one.priorWeight, samples };
});
const channels = createRun(sound).channels;
const atlas = assembleAtlas(
  'school',
  'made for a test',
  channels,
  { fault: null, priorWeight: 1, samples: soundSamples },
  faultSamples,
);
const places = keyPlacesOf(atlas);
const withFault = (id: string, severity = 1): RunSetup => ({
  ...scripted(sound),
  faults: [{ fault: id, severity, onset: { kind: 'start' } }],
});
const keyOf = (name: string) => {
  const key = atlas.keys[places.get(name) ?? -1];
  if (key === undefined) throw new Error(`no key ${name}`);
  return key;
};
const binsAt = (name: string, cause: string | null) => {
  const { bins, column } = keyOf(name);
  const place = atlas.causes.findIndex((one) => one.fault === cause);
  return [...column].flatMap((bin, p) => (atlas.causeOf[p] === place ? [bins[bin]] : []));
};

describe('samples', () => {
  it('are the same each time they are taken', () => {
    const [one] = samplesOf(plan, null, 1);
    expect(one?.readings).toEqual(soundSamples[0]?.readings);
  });

  it('of sound plants are within their own band in all that has a number', () => {
    const outside = atlas.keys.flatMap((key, k) =>
      key.band === null
        ? []
        : binsAt([...places][k]?.[0] ?? '', null).filter((bin) => bin === 'low' || bin === 'high'),
    );
    expect(outside).toEqual([]);
  });

  it('differ where the fault is, by what the plant does and not by what it is called', () => {
    const lockedOut = binsAt('history|@lockout#cause', 'ignition transformer dead');
    expect(new Set(lockedOut).size).toBe(1);
    expect(lockedOut).not.toContain('not reached');
    expect(binsAt('history|@lockout#cause', null)).toContain('not reached');
    expect(binsAt('look|fan rotation@purge#words', 'fan turning backwards')).not.toEqual(
      binsAt('look|fan rotation@purge#words', null).slice(0, 2),
    );
  });

  it('find a boiler as cold as it may be without holding it for a sign', () => {
    const cooler = structuredClone(sound);
    Object.assign(cooler.initial, { waterTemperatureK: 319, load: 0.5 });
    const own = sampleOfCase({ ...plan, setup: scripted(cooler) }, scripted(cooler));
    const gauge = atlas.keys.filter(({ check }) => check === 'look|boiler gauge');
    for (const { check, moment, aspect, bins, band } of gauge) {
      const value = own.get(`${check}@${moment}#${aspect}`);
      if (typeof value !== 'number' || band === null) continue;
      expect(value).toBeGreaterThan(band.low);
      expect(bins).toContain('in band');
    }
  });

  it('hear, smell and wet a joint that leaks', () => {
    const leak = fault('gas escapes at the regulator joint');
    const [one] = samplesOf(plan, leak, 1);
    const wet = [...(one?.readings ?? [])].filter(([name]) => name.startsWith('leak spray|'));
    const words = new Set(wet.map(([, word]) => word));
    expect(words).toContain('spray-none');
    expect(words).toContain('spray-blown');
  });

  it('leave out what tells nothing: each key has at least two bins in use', () => {
    for (const { bins, column } of atlas.keys) {
      expect(new Set(column).size).toBeGreaterThan(1);
      expect(Math.max(...column)).toBeLessThan(bins.length);
    }
  });
});

describe('an atlas', () => {
  it('comes back from its file as it was, but for digits of its edges', () => {
    const back = decodeAtlas(encodeAtlas(atlas));
    expect(back?.causes).toEqual(atlas.causes);
    expect(back?.causeOf).toEqual(atlas.causeOf);
    expect(back?.keys.map(({ band, ...key }) => key)).toEqual(
      atlas.keys.map(({ band, ...key }) => key),
    );
    back?.keys.forEach(({ band }, k) => {
      const low = atlas.keys[k]?.band?.low ?? 0;
      expect(Math.abs((band?.low ?? 0) - low)).toBeLessThanOrEqual(1e-4 * Math.abs(low));
    });
  });

  it('is refused where the text is none, or of another form', () => {
    expect(decodeAtlas('{"format":0}')).toBeNull();
    expect(decodeAtlas('no atlas')).toBeNull();
  });

  it('knows a fault by its effect: another severity, plant or fault is another one', () => {
    const setup = scripted(sound);
    const one = effectOf(plan, fault('ignition transformer dead'));
    expect(effectOf(plan, fault('ignition transformer dead'))).toBe(one);
    expect(effectOf(plan, fault('fan turning backwards'))).not.toBe(one);
    const other = structuredClone(setup);
    Object.assign(other.plant.ambient, { altitudeM: 900 });
    expect(effectOf({ ...plan, setup: other }, fault('ignition transformer dead'))).not.toBe(one);
  });

  it('takes one more plant in, at the place of its cause, and no reading of it is impossible', () => {
    const own = sampleOfCase(plan, withFault('low-gas switch drifted up', 0.9));
    const more = withPlant(atlas, 'low-gas switch drifted up', own);
    const cause = more.causes.findIndex(({ fault: id }) => id === 'low-gas switch drifted up');
    const at = more.causeOf.indexOf(cause);
    expect([...more.causeOf].filter((one) => one === cause)).toHaveLength(3);
    expect([...more.causeOf]).toEqual([...more.causeOf].sort((a, b) => a - b));
    for (const { bins, column } of more.keys) {
      expect(column).toHaveLength(more.causeOf.length);
      expect(bins[column[at] ?? -1]).toBeDefined();
    }
    expect(withPlant(atlas, 'no such fault', own)).toBe(atlas);
  });

  it('prices a question by its tariff, its tool and how long the plant takes to come there', () => {
    const question = (check: string, moment: string) => ({ check, moment });
    const now = question('manometer|regulated', 'lockout');
    expect(questionMinutes(atlas, now)).toBe(3);
    expect(questionCost(atlas, now)).toBeGreaterThan(3);
    const later = question('manometer|regulated', 'main trial');
    expect(questionMinutes(atlas, later)).toBeGreaterThan(questionMinutes(atlas, now) + 1);
    expect(questionMinutes(atlas, question('look|electrode', 'standing'))).toBeGreaterThan(10);
    expect(toolFor('volts|24')).toBe('multimeter');
    expect(toolFor('look|electrode')).toBeNull();
    for (const one of questionsOf(atlas)) expect(questionCost(atlas, one)).toBeGreaterThan(0);
  });
});

describe('a learner at the plant', () => {
  it('reads what the atlas has for the same plant, with tools put on later and looks taken by hand', () => {
    const run = createRun(withFault('ignition transformer dead'));
    run.advanceTo(40);
    const use = { tool: 'manometer', place: 'regulated', range: 'low' } as const;
    const state = createToolState(use, 40);
    while (run.status().step !== 'spark check') run.advanceTo(run.timeS() + 0.1);
    run.advanceTo(run.timeS() + 1.5);
    const spark = run.look('spark');
    const seen = observationsOf(atlas, places, 'spark check', [
      ...toolReadings(use, readTool(run, use, state)),
      ...(spark === null ? [] : lookReadings(spark)),
    ]);
    expect(seen.length).toBeGreaterThan(0);
    const suspects = rankedSuspects(atlas, afterSeeing(priorBelief(atlas), atlas, seen));
    expect(suspects[0]?.fault).toBe('ignition transformer dead');
    expect(suspects[0]?.share).toBeGreaterThan(0.8);
  });

  it('sees what hangs on no step in any step', () => {
    const standing = atlas.keys.filter(({ moment }) => moment === 'standing');
    expect(standing.length).toBeGreaterThan(0);
    for (const { check, aspect } of standing) {
      const at = observationsOf(atlas, places, 'purge', [{ check, aspect, value: 'any' }]);
      expect(at).toHaveLength(1);
    }
  });
});
