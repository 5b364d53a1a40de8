import { describe, expect, it } from 'vitest';
import type { ToolReading } from '../../src/bench/index.ts';
import {
  AT_REST,
  checkName,
  continuityReading,
  heardReadings,
  ISOLATED,
  isLive,
  LOCKED_OUT,
  lookReadings,
  momentOf,
  partsOfCheck,
  smellReading,
  toolReadings,
  voltsReading,
  wirePlacesOf,
} from '../../src/diagnosis/index.ts';
import { shippedSetup } from '../support/library.ts';

const places = wirePlacesOf(shippedSetup('healthy-start').plant);
const shown: ToolReading = {
  value: 1200,
  kind: 'gas pressure',
  unit: 'mbar',
  shown: '12.0',
  flags: [],
  steady: true,
};
const hose = { tool: 'manometer', place: 'regulated' } as const;

describe('the situation of a check', () => {
  it('is the step, but for a plant without supply, in lockout, or not called for', () => {
    const called = { calledForHeat: true, supplyOn: true };
    expect(momentOf('purge', called)).toBe('purge');
    expect(momentOf('standby', called)).toBe('standby');
    expect(momentOf('standby', { ...called, calledForHeat: false })).toBe(AT_REST);
    expect(momentOf('lockout', { ...called, calledForHeat: false })).toBe(LOCKED_OUT);
    expect(momentOf('purge', { ...called, supplyOn: false })).toBe(ISOLATED);
  });
});

describe('what a tool tells', () => {
  it('is its value, also while it moves, and a word where there is none', () => {
    const value = (reading: ToolReading) => toolReadings(hose, reading)[0]?.value;
    expect(value(shown)).toBe(1200);
    const moving = { ...shown, flags: ['settling'], steady: false } as const;
    expect(toolReadings(hose, moving).map(({ value }) => value)).toEqual([1200, 'unsteady']);
    expect(value({ ...shown, value: null, flags: ['over range'], steady: false })).toBe(
      'over range',
    );
    expect(value({ ...shown, value: null, flags: ['no signal'], steady: false })).toBe('no signal');
  });

  it('is the same check in each of its ranges', () => {
    const [low] = toolReadings({ ...hose, range: 'low' }, shown);
    const [high] = toolReadings({ ...hose, range: 'high' }, shown);
    expect(low).toEqual(high);
    expect(partsOfCheck(low?.check ?? '')).toEqual({
      what: 'manometer',
      place: 'regulated',
      other: '',
    });
  });
});

describe('what a meter tells', () => {
  it('is of a wire, at whichever terminal of it and with either lead the reading was taken', () => {
    const reading = voltsReading(places, '24', 'N', 118);
    expect(reading).toEqual({ check: checkName('volts', '24'), aspect: 'value', value: 118 });
    const terminal = [...places.wireAt].find(([at, wire]) => wire === '24' && at.endsWith(':2'));
    expect(voltsReading(places, terminal?.[0] ?? '', 'N', 118)).toEqual(reading);
    expect(voltsReading(places, 'N', '24', -118)).toEqual(reading);
    expect(voltsReading(places, '24', 'earth', 118)).toEqual(reading);
  });

  it('is nothing of one wire between two that may both be live', () => {
    expect(voltsReading(places, '24', '25', 0)).toBeNull();
  });

  it('holds a wire for live at half of what its own source gives', () => {
    expect(isLive(places, '24', 70)).toBe(true);
    expect(isLive(places, '24', 24)).toBe(false);
    expect(isLive(places, 'P24F', 23.8)).toBe(true);
    expect(isLive(places, 'P5', 4.9)).toBe(true);
  });

  it('is a way, a load or nothing where there is no supply, and no reading where there is', () => {
    const dead = { overload: false, live: false };
    const value = (ohm: number) =>
      continuityReading('24', 'L1', { ...dead, value: ohm })?.value ?? null;
    expect([value(0.2), value(800), value(2e7)]).toEqual(['through', 'some ohms', 'open']);
    expect(continuityReading('24', 'L1', { ...dead, value: 0.2, live: true })).toBeNull();
    expect(continuityReading('L1', '24', { ...dead, value: 1 })).toEqual(
      continuityReading('24', 'L1', { ...dead, value: 1 }),
    );
  });
});

describe('what senses tell', () => {
  it('a look gives its words together and each number by itself', () => {
    const readings = lookReadings({
      what: 'lens',
      words: ['look.lens.film'],
      values: { clearShare: 0.4 },
      needsOpening: true,
    });
    expect(readings).toEqual([
      { check: 'look|lens', aspect: 'words', value: 'look.lens.film' },
      { check: 'look|lens', aspect: 'clearShare', value: 0.4 },
    ]);
  });

  it('ears say of every sound how loud it is, also when it is not there', () => {
    const heard = heardReadings([{ what: 'belt squeal', loudness: 0.9 }], ['fan', 'belt squeal']);
    expect(heard.map(({ aspect, value }) => [aspect, value])).toEqual([
      ['fan', 'none'],
      ['belt squeal', 'loud'],
    ]);
  });

  it('a nose tells more gas from less', () => {
    const words = [0, 0.005, 0.05, 0.5].map((share) => smellReading(share).value);
    expect(new Set(words).size).toBe(4);
  });
});
