import { describe, expect, it } from 'vitest';
import { indexChannels } from '../../../src/view/channels.ts';
import { contactorReader } from '../../../src/view/schematic/contactor-state.ts';
import { fireTube } from '../plants.ts';

const channels = indexChannels([
  { id: 'fan.current', unit: 'A' },
  { id: 'wiring.made.0', unit: '1' },
  { id: 'wiring.made.1', unit: '1' },
]);

describe('the fan contactor', () => {
  it('is in while the wiring says so, although a dead motor draws nothing', () => {
    const isIn = contactorReader({ ...fireTube, contactorPlace: 32 }, channels);
    expect(isIn(Float64Array.of(0, 0, 0b100))).toBe(true);
    expect(isIn(Float64Array.of(9, 0b100, 0b011))).toBe(false);
  });

  it('of a run that does not record its wiring is judged by the current', () => {
    const isIn = contactorReader({ ...fireTube, contactorPlace: -1 }, channels);
    expect(isIn(Float64Array.of(9, 0, 0))).toBe(true);
    expect(isIn(Float64Array.of(0, 0, 0))).toBe(false);
  });
});
