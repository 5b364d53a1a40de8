import { describe, expect, it } from 'vitest';
import {
  createIgnitionTransformer,
  stepIgnitionTransformer,
} from '../../src/field/ignition-transformer.ts';
import {
  type IgnitionTransformerParameters,
  ignitionTransformerParameters,
} from '../../src/field/index.ts';
import { fillDefaults } from './fill-defaults.ts';

function watts(given: Partial<IgnitionTransformerParameters>, energised = true, volts = 1): number {
  const transformer = createIgnitionTransformer(
    fillDefaults(ignitionTransformerParameters, { id: 'transformer', ratedW: 60, ...given }),
  );
  stepIgnitionTransformer(transformer, energised, volts);
  return transformer.outputW;
}

describe('ignition transformer', () => {
  it('gives its rated power while energised, and nothing otherwise', () => {
    expect(watts({})).toBe(60);
    expect(watts({}, false)).toBe(0);
  });

  it('gives nothing when dead, and loses by square of the volts', () => {
    expect(watts({ health: 0 })).toBe(0);
    expect(watts({}, true, 0.8)).toBeCloseTo(38.4, 9);
  });

  it('loses to earth along a tracking lead and, of the rest, through a cracked insulator', () => {
    expect(watts({ leadTracking: 0.5 })).toBe(30);
    expect(watts({ leadTracking: 0.5, insulatorCracked: 0.5 })).toBe(15);
    expect(watts({ insulatorCracked: 1 })).toBe(0);
  });
});
