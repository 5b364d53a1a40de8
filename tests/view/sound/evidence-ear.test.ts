import { describe, expect, it } from 'vitest';
import { createEvidenceEar } from '../../../src/view/sound/evidence-ear.ts';

const channels = [
  { id: 'fan.speed', unit: 'rpm' },
  { id: 'fan.belt-slip', unit: '1' },
  { id: 'gas.regulated.pressure', unit: 'Pa' },
  { id: 'gas.vent-valve.flow', unit: 'kg/s' },
];
const at = (rpm: number, slip: number, pa = 0, ventKgS = 0) =>
  Float64Array.of(rpm, slip, pa, ventKgS);

/** The loudest hunting in the seconds given, frames a tenth of a second apart. */
function hunting(pressure: (tS: number) => number, seconds: number): number {
  const ear = createEvidenceEar(channels);
  let loudest = 0;
  for (let k = 0; k < seconds * 10; k += 1) {
    loudest = Math.max(loudest, ear.hear(at(0, 0, pressure(k / 10)), k / 10).hunting);
  }
  return loudest;
}

describe('sounds that tell of something wrong', () => {
  it('a belt squeals by the speed it loses, and neither at rest nor while it only creeps', () => {
    const squeal = (rpm: number, slip: number) =>
      createEvidenceEar(channels).hear(at(rpm, slip), 0).squeal;
    expect(squeal(1700, 0.01)).toBe(0);
    expect(squeal(0, 0.2)).toBe(0);
    expect(squeal(1700, 0.1)).toBeGreaterThan(0.1);
    expect(squeal(1700, 0.2)).toBeGreaterThan(squeal(1700, 0.1));
  });

  it('a regulator that swings four times in five seconds hunts, louder for a wider swing', () => {
    const swing = (share: number) => (tS: number) =>
      2000 * (1 + share * Math.sin(2 * Math.PI * 0.8 * tS));
    expect(hunting(swing(0.03), 8)).toBeGreaterThan(0.1);
    expect(hunting(swing(0.08), 8)).toBeGreaterThan(hunting(swing(0.03), 8));
  });

  it('neither a steady outlet nor one fall and rise as a valve opens is taken for hunting', () => {
    expect(hunting(() => 2000, 8)).toBe(0);
    const dip = (tS: number) => (tS < 3 ? 2200 : 2000 - 600 * Math.exp(-(tS - 3) * 2));
    expect(hunting(dip, 10)).toBe(0);
  });

  it('swings on both sides of a jump in time are not put together', () => {
    const ear = createEvidenceEar(channels);
    let loudest = 0;
    for (let k = 0; k < 200; k += 1) {
      const tS = k / 10 + Math.floor(k / 20) * 60;
      const pa = 2000 * (1 + 0.1 * Math.sin(2 * Math.PI * 0.8 * tS));
      loudest = Math.max(loudest, ear.hear(at(0, 0, pa), tS).hunting);
    }
    expect(loudest).toBe(0);
  });

  it('gas through the vent hisses, whichever way it goes', () => {
    const hiss = (kgS: number) => createEvidenceEar(channels).hear(at(0, 0, 0, kgS), 0).hiss;
    expect(hiss(0)).toBe(0);
    expect(hiss(1e-4)).toBeCloseTo(0.5, 6);
    expect(hiss(-1e-4)).toBe(hiss(1e-4));
  });
});
