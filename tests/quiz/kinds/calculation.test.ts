import { describe, expect, test } from 'vitest';
import { createRun, type Run } from '../../../src/engine/index.ts';
import { formatNumber, fromDisplay, UNIT_SYSTEMS } from '../../../src/quantity/index.ts';
import {
  farthestOff,
  isRight,
  lintItem,
  lintWords,
  type NumberItem,
  type Rejection,
  setupOfRun,
} from '../../../src/quiz/index.ts';
import { calculationMaker } from '../../../src/quiz/kinds/calculation/calculation-maker.ts';
import { LINT_VOCABULARY, namesOfPlant, wordItem } from '../../../src/wording/index.ts';
import { PLANTS, plantWithoutAtlas } from './quiz-plants.ts';

const SEEDS = 26;

const rejected = new Map<Rejection, number>();
const ITEMS: readonly NumberItem[] = PLANTS.flatMap((id) =>
  Array.from({ length: SEEDS }, (_, seed) => {
    const made = calculationMaker.make(plantWithoutAtlas(id), seed);
    if (!made.ok) rejected.set(made.why, (rejected.get(made.why) ?? 0) + 1);
    return made.ok && made.item.answer === 'number' ? [made.item] : [];
  }).flat(),
);

/** Every number that the stem gives, by its name there; of two alike the first. */
function givensOf({ stem }: NumberItem): Readonly<Record<string, number>> {
  const found: Record<string, number> = {};
  for (const { with: places = {} } of stem.tells) {
    for (const [name, term] of Object.entries(places)) {
      const value =
        typeof term === 'number'
          ? term
          : typeof term === 'object' && term.is === 'amount'
            ? term.value
            : null;
      if (value !== null) found[name] ??= value;
    }
  }
  return found;
}

const ofTopic = (...topics: string[]) =>
  ITEMS.filter(({ topic }) => topics.includes(topic.replace('calculation/', '')));

function runOf(item: NumberItem): Run {
  if (item.run === null) throw new Error(`${item.id} has no run`);
  const run = createRun(setupOfRun(plantWithoutAtlas(item.plant).plan, item.run));
  run.advanceTo(item.run.untilS);
  return run;
}

function columnOf(run: Run, channel: string): number[] {
  const place = run.channels.findIndex(({ id }) => id === channel);
  return Array.from({ length: run.frameCount() }, (_, k) => run.frame(k)[place] as number);
}

describe('every sum', () => {
  test('keeps most seeds, and no two of a plant are alike', () => {
    expect(ITEMS.length).toBeGreaterThan(0.7 * SEEDS * PLANTS.length);
    const stems = new Set(ITEMS.map(({ stem, key, plant }) => JSON.stringify([plant, stem, key])));
    expect(stems.size).toBeGreaterThan(0.95 * ITEMS.length);
    expect([...rejected.keys()].sort()).toEqual(
      [...rejected.keys()]
        .filter((why) =>
          (['differs by tolerance', 'not worth asking'] as Rejection[]).includes(why),
        )
        .sort(),
    );
  });

  test('takes its key as right, in the digits of each system too, and no slip', () => {
    for (const item of ITEMS) {
      const answer = (value: number) => isRight(item, { is: 'number', value });
      expect(answer(item.key), item.id).toBe(true);
      for (const system of UNIT_SYSTEMS) {
        const shown = Number(formatNumber(item.key, item.of, system));
        expect(answer(fromDisplay(shown, item.of, system)), item.id).toBe(true);
      }
      for (const { value } of item.mistakes ?? []) expect(answer(value), item.id).toBe(false);
      expect(farthestOff(item)).toBeGreaterThan(0);
    }
  });

  test('has slips to name in nearly all, a caution and working in all', () => {
    const named = ITEMS.filter(({ mistakes = [] }) => mistakes.length > 0);
    expect(named.length).toBeGreaterThan(0.9 * ITEMS.length);
    for (const { caution, working } of ITEMS) {
      expect(caution).not.toBeNull();
      expect(working.length).toBeGreaterThanOrEqual(2);
    }
  });

  test('passes the lint, by structure and by its words', () => {
    for (const item of ITEMS) {
      const { plan } = plantWithoutAtlas(item.plant);
      const names = namesOfPlant(plan.setup.plant, createRun(plan.setup).channels);
      expect(lintItem(item), item.id).toEqual([]);
      for (const system of UNIT_SYSTEMS) {
        const worded = wordItem(item, names, system, []);
        expect(lintWords(worded, LINT_VOCABULARY), item.id).toEqual([]);
      }
    }
  });

  test('is the same again from the same seed', () => {
    for (const id of PLANTS) {
      const own = ITEMS.filter(({ plant }) => plant === id).slice(0, 4);
      for (const item of own) {
        const seed = Number(item.id.split('/')[2]);
        const again = calculationMaker.make(plantWithoutAtlas(id), seed);
        expect(JSON.stringify(again.ok && again.item)).toBe(JSON.stringify(item));
      }
    }
  });
});

describe('a leak rate', () => {
  const items = ofTopic('leak rate');

  test('follows from the numbers of its stem', () => {
    expect(items.length).toBeGreaterThan(5);
    for (const item of items) {
      const { volume, start, end, time, air } = givensOf(item) as Record<string, number>;
      const m3 =
        ((volume as number) * Math.abs((end as number) - (start as number))) / (air as number);
      expect(item.key).toBeCloseTo((m3 * 1000 * 3600) / (time as number), 6);
    }
  });

  test('is what the simulator let through in that time', () => {
    // Of the plants' gas at 15 °C and 1013 mbar: 16.507 g/mol.
    const densityKgM3 = (101325 * 0.016507) / (8.314462 * 288.15);
    for (const item of items) {
      const given = givensOf(item) as { start: number; end: number; time: number };
      const fault = item.run?.faults[0]?.fault ?? '';
      const valve = /^(\w+) valve seat passes/.exec(fault)?.[1];
      const run = runOf(item);
      const pressure = columnOf(
        run,
        valve === undefined ? 'gas.inlet.pressure' : 'gas.interspace.pressure',
      );
      const flow = columnOf(run, valve === undefined ? 'gas.leak' : `gas.${valve}-valve.flow`);
      const frames = Math.round(given.time / run.frameS);
      const near = (a: number | undefined, b: number) => Math.abs((a ?? 0) - b) <= 5.001;
      const from = pressure.findIndex(
        (pa, k) => near(pa, given.start) && near(pressure[k + frames], given.end),
      );
      expect(from, item.id).toBeGreaterThanOrEqual(0);
      const watched = flow.slice(from, from + frames);
      const meanKgS = watched.reduce((sum, one) => sum + one, 0) / watched.length;
      const trueDm3H = (meanKgS / densityKgM3) * 1000 * 3600;
      // Rounding of the pressures, up to 3.6 %, and a window that may be a frame off.
      expect(Math.abs(item.key / trueDm3H - 1), `${item.id} ${fault}`).toBeLessThan(0.05);
    }
  });
});

describe('a purge', () => {
  test('follows from the numbers of its stem', () => {
    for (const item of ofTopic('purge time', 'air changes')) {
      const given = givensOf(item);
      const { furnace = 0, passes = 0, flow = 0, sheet, head, changes, time } = given;
      const now = sheet === undefined ? flow : flow * Math.sqrt((head ?? 0) / sheet);
      const one = (furnace + passes) / now;
      expect(item.key).toBeCloseTo(time === undefined ? (changes ?? 0) * one : time / one, 6);
    }
  });

  test('of a time by the differential lasts as long as the plant counts', () => {
    const items = ofTopic('purge time').filter((item) => 'sheet' in givensOf(item));
    expect(items.length).toBeGreaterThan(0);
    for (const item of items) {
      if (item.run === null) continue;
      const { plan } = plantWithoutAtlas(item.plant);
      const run = createRun(setupOfRun(plan, item.run));
      run.advanceTo(item.run.untilS + item.key + 20);
      const events = run.events();
      const began = events.find((e) => e.type === 'step' && e.step === 'purge')?.t ?? 0;
      const counted = events.find((e) => e.type === 'proved' && e.what === 'air changes')?.t ?? 0;
      // The air settles within the first seconds, and the reading is of one moment.
      expect(Math.abs((counted - began) / item.key - 1), item.id).toBeLessThan(0.03);
    }
  });
});

describe('a sum of flue gas', () => {
  const air = ofTopic('excess air', 'air ratio');
  const flue = ofTopic('flue loss', 'efficiency');

  test('follows from the numbers of its stem', () => {
    expect(air.length).toBeGreaterThan(3);
    expect(flue.length).toBeGreaterThan(3);
    for (const item of air) {
      const { oxygen = 0, factor = 0 } = givensOf(item);
      const excess = (factor * 100 * oxygen) / (20.9 - 100 * oxygen);
      expect(item.key).toBeCloseTo(item.topic.endsWith('ratio') ? 1 + excess : excess, 9);
    }
    for (const item of flue) {
      const { oxygen = 0, flue: hot = 0, air: cold = 0 } = givensOf(item);
      const loss = ((hot - cold) * (0.66 / (21 - 100 * oxygen) + 0.009)) / 100;
      expect(item.key).toBeCloseTo(item.topic.endsWith('loss') ? loss : 1 - loss, 9);
    }
  });

  test('says of the air what the simulator sent through the burner', () => {
    for (const item of air) {
      if ((item.run?.faults ?? []).some(({ fault }) => fault.startsWith('gas leaner'))) continue;
      const run = runOf(item);
      const last = (channel: string) =>
        columnOf(run, channel)
          .slice(-20)
          .reduce((a, b) => a + b) / 20;
      const ratio = last('air.flow') / last('gas.nozzle.flow') / 16.99;
      const said = item.topic.endsWith('ratio') ? item.key : 1 + item.key;
      // Rounding of the oxygen to 0.1 %, and air that passes the head unburnt.
      expect(Math.abs(said - ratio), item.id).toBeLessThan(0.025);
    }
  });

  test('says of the loss what exact heats of the flue gas say', () => {
    for (const item of flue) {
      const run = runOf(item);
      const net = columnOf(run, 'efficiency.net').at(-10) as number;
      // The simulator takes off one per cent for the shell besides, and what CO there is.
      const loss = 1 - net - 0.01;
      const said = item.topic.endsWith('loss') ? item.key : 1 - item.key;
      expect(Math.abs(said - loss), item.id).toBeLessThan(0.004);
    }
  });
});

describe('volts', () => {
  test('between a wire and neutral are what a meter of the same run shows', () => {
    const items = ofTopic('volts behind made', 'volts behind open');
    expect(items.length).toBeGreaterThan(4);
    for (const item of items) {
      const { wire, neutral } = item.stem.asks.with as { wire: string; neutral: string };
      const read = runOf(item).meter({ kind: 'volts', from: wire, to: neutral });
      expect(Math.abs((read?.value ?? -1) - item.key), item.id).toBeLessThan(farthestOff(item) / 2);
    }
  });

  test('come both ways: the whole supply and next to nothing', () => {
    const keys = ITEMS.filter(({ topic }) => /volts|wire out/.test(topic)).map(({ key }) => key);
    expect(keys.some((key) => key > 100)).toBe(true);
    expect(keys.some((key) => key === 0)).toBe(true);
  });

  test('of a loop and a feedback track follow from the numbers of the stem', () => {
    for (const item of ofTopic('loop current', 'loop volts', 'loop reading')) {
      const { low = 0, high = 0, shown = 0, ohm = 1, volts = 0 } = givensOf(item);
      const amps = 0.004 + (0.016 * (shown - low)) / (high - low);
      const back = low + ((volts / ohm - 0.004) / 0.016) * (high - low);
      const said = { current: amps, volts: ohm * amps, reading: back };
      const form = item.topic.replace('calculation/loop ', '') as keyof typeof said;
      expect(item.key / said[form]).toBeCloseTo(1, 9);
    }
    for (const item of ofTopic('feedback volts', 'feedback angle')) {
      const { zero = 0, full = 0, angle = 0, volts = 0 } = givensOf(item);
      const said = item.topic.endsWith('volts')
        ? zero + ((full - zero) * angle) / 90
        : (90 * (volts - zero)) / (full - zero);
      expect(item.key / said).toBeCloseTo(1, 9);
    }
  });
});
