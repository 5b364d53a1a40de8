/**
 * Where valve proving switches over from passing to locking out must follow from the volume, the
 * limit, the hold time and the gas law alone: worked out here by a separate integration, with the
 * textbook isentropic nozzle (the formula behind gas_train.json, leak_decay and valve_proving).
 */
import { describe, expect, it } from 'vitest';
import { createRun, type Run } from '../../src/engine/index.ts';
import { shippedSetup } from '../support/library.ts';

const setup = shippedSetup('healthy-start');
const { plant, profile } = setup;
const { timings } = profile;
const comparator = plant.field.interspaceComparators[0] as {
  riseLimitPa: number;
  fallLimitPa: number;
  dwellS: number;
};
const volumeM3 =
  1e-3 * (plant.gasTrain.nodes.find(({ id }) => id === 'interspace')?.volumeDm3 ?? 0);
const ATMOSPHERE_PA = 101_325;
const REFERENCE_K = 288.15;
const UNTIL_S = 60;
/**
 * Either side of the reckoned switch-over. The rest is what the arithmetic leaves out: the closing
 * valve moves gas for half a second, the comparator has its lag, and the gas is not pure methane.
 */
const MARGIN = 0.05;

describe('valve proving', () => {
  it('a leak of the downstream seat locks out from where the decay reaches the limit in time', () => {
    const switchOver = bisect((leak) => fallsInTime(leak));
    const below = lockoutOf('downstream valve seat passes', switchOver * (1 - MARGIN));
    const above = lockoutOf('downstream valve seat passes', switchOver * (1 + MARGIN));
    expect(below).toBeNull();
    expect(above).toEqual({
      cause: 'downstream or vent valve passes',
      step: 'valve proving: hold full',
    });
  });

  it('a leak of the upstream seat locks out from where the rise reaches the limit in time', () => {
    const switchOver = bisect((leak) => risesInTime(leak));
    const below = lockoutOf('upstream valve seat passes', switchOver * (1 - MARGIN));
    const above = lockoutOf('upstream valve seat passes', switchOver * (1 + MARGIN));
    expect(below).toBeNull();
    expect(above).toEqual({ cause: 'upstream valve passes', step: 'valve proving: hold empty' });
  });

  it('a healthy interspace moves less than a tenth of the way to either limit', () => {
    const run = createRun(setup);
    run.advanceTo(UNTIL_S);
    const held = (step: string): number => pressureAtEndOf(run, step);
    expect(held('valve proving: hold empty')).toBeLessThan(0.1 * comparator.riseLimitPa);
    const lost = supplyPa() - held('valve proving: hold full');
    expect(lost).toBeLessThan(0.1 * (supplyPa() - comparator.fallLimitPa));
  });
});

function lockoutOf(fault: string, severity: number) {
  const faults = [{ fault, severity, onset: { kind: 'start' } as const }];
  const run = createRun({ ...setup, faults });
  run.advanceTo(UNTIL_S);
  const event = run.events().find((one) => one.type === 'lockout');
  return event === undefined ? null : { cause: event.cause, step: event.step };
}

function pressureAtEndOf(run: Run, step: string): number {
  const at = run.channels.findIndex(({ id }) => id === 'gas.interspace.pressure');
  const steps = run.events().filter((event) => event.type === 'step');
  const left = steps[steps.findIndex((event) => event.step === step) + 1]?.t ?? UNTIL_S;
  return run.frame(Math.floor(left / run.frameS))[at] as number;
}

/** What the regulator holds with no flow. */
function supplyPa(): number {
  const run = createRun(setup);
  run.advanceTo(4);
  const at = run.channels.findIndex(({ id }) => id === 'gas.regulated.pressure');
  return run.frame(30)[at] as number;
}

function fallsInTime(leakDm3H: number): boolean {
  let pa = supplyPa();
  const area = areaOf(leakDm3H);
  const heldS = timings.vpHoldFullS - comparator.dwellS;
  const h = 0.002;
  for (let t = 0; t < heldS; t += h) {
    pa -= (h * gasPerPa() * massFlow(area, pa + ATMOSPHERE_PA, ATMOSPHERE_PA)) / volumeM3;
    if (pa <= comparator.fallLimitPa) return true;
  }
  return false;
}

function risesInTime(leakDm3H: number): boolean {
  let pa = 0;
  const area = areaOf(leakDm3H);
  const from = supplyPa() + ATMOSPHERE_PA;
  const heldS = timings.vpHoldEmptyS - comparator.dwellS;
  const h = 0.002;
  for (let t = 0; t < heldS; t += h) {
    pa += (h * gasPerPa() * massFlow(area, from, pa + ATMOSPHERE_PA)) / volumeM3;
    if (pa >= comparator.riseLimitPa) return true;
  }
  return false;
}

const METHANE_KG_MOL = 0.0160425;
const METHANE_GAMMA = 1.304;
const GAS_CONSTANT = 8.314462618;

/** R·T/M: pressure times volume of a kilogram. */
function gasPerPa(): number {
  return (GAS_CONSTANT * REFERENCE_K) / METHANE_KG_MOL;
}

/** Effective area that passes so many dm³/h (15 °C, 1013.25 mbar) with 100 mbar across it. */
function areaOf(leakDm3H: number): number {
  const kgS = ((leakDm3H / 3.6e6) * ATMOSPHERE_PA) / gasPerPa();
  return kgS / massFlow(1, ATMOSPHERE_PA + 10_000, ATMOSPHERE_PA);
}

/** Isentropic nozzle, subsonic: every pressure here is well above the critical ratio. */
function massFlow(areaM2: number, fromPa: number, toPa: number): number {
  const r = toPa / fromPa;
  const g = METHANE_GAMMA;
  const psi = (2 * g) / (g - 1);
  return (
    ((areaM2 * fromPa) / Math.sqrt(gasPerPa())) *
    Math.sqrt(Math.max(0, psi * (r ** (2 / g) - r ** ((g + 1) / g))))
  );
}

function bisect(locksOut: (leakDm3H: number) => boolean): number {
  let low = 1;
  let high = 20_000;
  for (let i = 0; i < 40; i++) {
    const middle = 0.5 * (low + high);
    if (locksOut(middle)) high = middle;
    else low = middle;
  }
  return 0.5 * (low + high);
}
