import { describe, expect, it } from 'vitest';
import { createContactBoard } from '../../src/field/contact.ts';
import {
  type InterspaceComparatorParameters,
  interspaceComparatorParameters,
  type TransmitterParameters,
  transmitterParameters,
} from '../../src/field/index.ts';
import {
  createInterspaceComparator,
  stepInterspaceComparator,
} from '../../src/field/interspace-comparator.ts';
import {
  createTransmitter,
  refreshTransmitterNoise,
  stepTransmitter,
} from '../../src/field/transmitter.ts';
import { createRandom } from '../../src/numeric/index.ts';
import { fillDefaults } from './fill-defaults.ts';

const STEP_S = 0.01;
const SUPPLY_PA = 10000;

function transmitter(given: Partial<TransmitterParameters> = {}, seed = 1) {
  const p = fillDefaults(transmitterParameters, {
    id: 'interspace',
    senses: 'interspace',
    highPa: 25000,
    ...given,
  });
  return createTransmitter(p, createRandom(seed, 'transmitter'), STEP_S);
}

function comparator(given: Partial<InterspaceComparatorParameters> = {}) {
  const p = fillDefaults(interspaceComparatorParameters, {
    id: 'interspace',
    emptyPa: 500,
    riseLimitPa: 5000,
    fallLimitPa: 5000,
    ...given,
  });
  return createInterspaceComparator(p, createContactBoard());
}

function hold(c: ReturnType<typeof comparator>, pressurePa: number, supplyPa = SUPPLY_PA) {
  for (let i = 0; i < 30; i++) stepInterspaceComparator(c, pressurePa, supplyPa, STEP_S);
  return [c.empty.contact.made, c.full.contact.made];
}

describe('interspace comparators', () => {
  it('tell empty, neither and full, each kept until its own limit', () => {
    const c = comparator();
    expect(hold(c, 400)).toEqual([true, false]);
    expect(hold(c, 4900)).toEqual([true, false]);
    expect(hold(c, 5100)).toEqual([false, false]);
    expect(hold(c, 8900)).toEqual([false, false]);
    expect(hold(c, 9100)).toEqual([false, true]);
    expect(hold(c, 5100)).toEqual([false, true]);
    expect(hold(c, 4900)).toEqual([false, false]);
    expect(hold(c, 4900)).toEqual([false, false]);
    expect(hold(c, 400)).toEqual([true, false]);
  });

  it('measure full against the supply there is', () => {
    const c = comparator();
    expect(hold(c, 7500, 8000)).toEqual([false, true]);
    expect(hold(comparator(), 7500, 10000)).toEqual([false, false]);
  });

  it('see an interspace become full when the supply comes down to it', () => {
    const c = comparator();
    expect(hold(c, 7500, 10000)).toEqual([false, false]);
    expect(hold(c, 7500, 8000)).toEqual([false, true]);
  });

  it('call nothing full when there is no supply', () => {
    expect(hold(comparator(), 0, 0)).toEqual([true, false]);
  });
});

describe('transmitter', () => {
  it('comes to the pressure, and reads off by its drift', () => {
    const sound = transmitter();
    const drifted = transmitter({ offsetPa: 700 });
    for (let i = 0; i < 300; i++) {
      stepTransmitter(sound, 8000);
      stepTransmitter(drifted, 8000);
    }
    expect(sound.readingPa).toBeCloseTo(8000, 3);
    expect(drifted.readingPa).toBeCloseTo(8700, 3);
  });

  it('hardly moves through a blocked impulse line', () => {
    const t = transmitter({ lineLagS: 3600 });
    for (let i = 0; i < 1000; i++) stepTransmitter(t, 10000);
    // 10 s of a lag of 3600 s: 0.28 %.
    expect(t.readingPa).toBeLessThan(30);
  });

  it('reads below its range when its signal is lost, and never above it', () => {
    const lost = transmitter({ signal: 'lost' });
    const over = transmitter();
    for (let i = 0; i < 300; i++) {
      stepTransmitter(lost, 8000);
      stepTransmitter(over, 90000);
    }
    expect(lost.readingPa).toBe(-6250);
    expect(over.readingPa).toBe(25000);
  });

  it('scatters alike for the same seed, and draws nothing when it has no noise', () => {
    const walk = (seed: number, noisePa: number) => {
      const t = transmitter({ noisePa }, seed);
      const untouched = createRandom(seed, 'transmitter');
      const seen = Array.from({ length: 50 }, () => {
        refreshTransmitterNoise(t);
        stepTransmitter(t, 8000);
        return t.readingPa;
      });
      return { seen, drew: t.random.d !== untouched.d };
    };
    expect(walk(3, 50)).toEqual(walk(3, 50));
    expect(walk(3, 50).seen).not.toEqual(walk(4, 50).seen);
    expect([walk(3, 50).drew, walk(3, 0).drew]).toEqual([true, false]);
  });
});
