import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { prepareAirPath, stepAirPath } from '../../../src/plant/air/index.ts';
import { blow, dairyAirPath, dairyAmbient } from './dairy-air-path.ts';

const PURGE_RPM = 1760;

describe('air path', () => {
  it('gives the flows and pressures of its commissioning sheet', () => {
    const purge = blow(dairyAirPath(), PURGE_RPM, 90);
    expect(purge.airFlowKgS).toBeGreaterThan(2.4);
    expect(purge.airFlowKgS).toBeLessThan(2.5);
    expect(purge.windboxGaugePa).toBeGreaterThan(1750);
    expect(purge.windboxGaugePa).toBeLessThan(1900);
    const lightOff = blow(dairyAirPath(), 900, 25);
    expect(lightOff.airFlowKgS).toBeGreaterThan(0.48);
    expect(lightOff.airFlowKgS).toBeLessThan(0.52);
    expect(lightOff.headDifferentialPa).toBeGreaterThan(65);
    expect(lightOff.headDifferentialPa).toBeLessThan(75);
  });

  it('settles where the fan makes up all losses', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 100, max: 1900, noNaN: true }),
        fc.double({ min: 5, max: 90, noNaN: true }),
        (rpm, deg) => {
          const air = blow(dairyAirPath(), rpm, deg);
          const square = air.airFlowKgS * air.airFlowKgS;
          const before = (air.inletResistance + air.damperResistance) * square;
          // Fan rise = screen, duct, damper + all that stands behind; room enters by the gauge.
          const needed = before + air.windboxGaugePa;
          expect(Math.abs(air.fanRisePa - needed)).toBeLessThan(1e-3 + 1e-4 * air.fanRisePa);
        },
      ),
      { seed: 21, numRuns: 30 },
    );
  });

  it('passes more air the wider the damper and the faster the fan', () => {
    let last = 0;
    for (let deg = 0; deg <= 90; deg += 5) {
      const flow = blow(dairyAirPath(), PURGE_RPM, deg).airFlowKgS;
      expect(flow).toBeGreaterThan(last);
      last = flow;
    }
    last = 0;
    for (let rpm = 100; rpm <= 1800; rpm += 100) {
      const flow = blow(dairyAirPath(), rpm, 40).airFlowKgS;
      expect(flow).toBeGreaterThan(last);
      last = flow;
    }
  });

  it('comes to the same flow from rest, from full flow and from reverse', () => {
    const fromRest = blow(dairyAirPath(), 1200, 40).airFlowKgS;
    const fromFull = blow(blow(dairyAirPath(), PURGE_RPM, 90), 1200, 40).airFlowKgS;
    const reverse = blow(dairyAirPath(), 0, 90, 2, 3000);
    expect(reverse.airFlowKgS).toBeLessThan(-1);
    expect(fromFull).toBeCloseTo(fromRest, 6);
    expect(blow(reverse, 1200, 40).airFlowKgS).toBeCloseTo(fromRest, 6);
  });

  it('follows a jump of speed by the inertia of the air: not in one step, but within 0.2 s', () => {
    const air = blow(dairyAirPath(), PURGE_RPM, 90, 0.01);
    const first = air.airFlowKgS;
    blow(air, PURGE_RPM, 90, 0.19);
    const soon = air.airFlowKgS;
    blow(air, PURGE_RPM, 90);
    expect(first).toBeLessThan(0.3 * air.airFlowKgS);
    expect(soon).toBeGreaterThan(0.97 * air.airFlowKgS);
  });

  it('stands still with a cold stack and no fan, and draws when the stack is hot', () => {
    const air = blow(dairyAirPath(), 0, 90);
    expect(Math.abs(air.airFlowKgS)).toBeLessThan(1e-6);
    for (let i = 0; i < 1000; i++)
      stepAirPath(
        air,
        {
          shaftSpeedRpm: 0,
          bladeDeg: 90,
          fuelKgS: 0,
          furnaceTemperatureK: 460,
          flueTemperatureK: 460,
          productShare: 0,
          pulsePa: 0,
        },
        0.01,
      );
    expect(air.airFlowKgS).toBeGreaterThan(0.1);
    expect(air.furnaceGaugePa).toBeLessThan(0);
    expect(air.draughtPa).toBeGreaterThan(0);
  });

  it('turning backwards delivers about the root of the pressure that is left', () => {
    const forward = blow(dairyAirPath(), PURGE_RPM, 90);
    const backward = blow(dairyAirPath(), -PURGE_RPM, 90);
    // The fan's own curve bends the root of 0.3 a little.
    expect(backward.airFlowKgS / forward.airFlowKgS).toBeCloseTo(Math.sqrt(0.3), 1);
    expect(backward.shaftPowerW).toBeGreaterThan(0);
  });

  it('loads the shaft with torque by the square and power by the cube of speed', () => {
    const full = blow(dairyAirPath(), 1600, 60);
    const half = blow(dairyAirPath(), 800, 60);
    expect(full.shaftTorqueNm / half.shaftTorqueNm).toBeCloseTo(4, 2);
    expect(full.shaftPowerW / half.shaftPowerW).toBeCloseTo(8, 2);
  });

  it('at height carries less mass and less pressure at the same speed', () => {
    const low = blow(dairyAirPath(), PURGE_RPM, 90);
    const high = blow(dairyAirPath(dairyAmbient(2000, 20)), PURGE_RPM, 90);
    const thin = high.ambient.densityKgM3 / low.ambient.densityKgM3;
    expect(high.airFlowKgS / low.airFlowKgS).toBeCloseTo(thin, 3);
    expect(high.headDifferentialPa / low.headDifferentialPa).toBeCloseTo(thin, 3);
  });

  it.each([
    ['inlet screen blocked', (p: Parts) => Object.assign(p.passages, { screenBlockage: 0.8 })],
    ['burner head blocked', (p: Parts) => Object.assign(p.passages, { headBlockage: 0.5 })],
    ['passes sooted', (p: Parts) => Object.assign(p.passages, { passBlockage: 0.8 })],
    ['flue shut', (p: Parts) => Object.assign(p.stack, { blockage: 0.9 })],
    ['room starved', (p: Parts) => Object.assign(p.passages, { roomBlockage: 0.95 })],
  ])('%s: less air, without a restart and without a jump', (_title, change) => {
    const air = blow(dairyAirPath(), PURGE_RPM, 90);
    const before = air.airFlowKgS;
    change(air.parameters);
    prepareAirPath(air);
    expect(air.airFlowKgS).toBe(before);
    blow(air, PURGE_RPM, 90);
    expect(air.airFlowKgS).toBeLessThan(0.9 * before);
  });

  it('shows where a blockage is: before the head it starves it, behind it it dams', () => {
    const sound = blow(dairyAirPath(), PURGE_RPM, 90);
    const flue = dairyAirPath();
    flue.parameters.stack.blockage = 0.9;
    prepareAirPath(flue);
    blow(flue, PURGE_RPM, 90);
    expect(flue.furnaceGaugePa).toBeGreaterThan(5 * sound.furnaceGaugePa);
    expect(flue.draughtPa).toBeLessThan(sound.draughtPa);
    const room = dairyAirPath();
    room.parameters.passages.roomBlockage = 0.97;
    prepareAirPath(room);
    blow(room, PURGE_RPM, 90);
    expect(room.roomPa).toBeLessThan(-200);
    expect(room.headDifferentialPa).toBeLessThan(0.8 * sound.headDifferentialPa);
  });

  it('rises with the furnace when its gas is hot: same fan, more pressure behind, less air', () => {
    const air = blow(dairyAirPath(), PURGE_RPM, 90);
    const cold = air.airFlowKgS;
    const coldPa = air.furnaceGaugePa;
    for (let i = 0; i < 1000; i++)
      stepAirPath(
        air,
        {
          shaftSpeedRpm: PURGE_RPM,
          bladeDeg: 90,
          fuelKgS: 0.12,
          furnaceTemperatureK: 1320,
          flueTemperatureK: 500,
          productShare: 0.85,
          pulsePa: 0,
        },
        0.01,
      );
    expect(air.airFlowKgS).toBeLessThan(cold);
    expect(air.furnaceGaugePa).toBeGreaterThan(1.5 * coldPa);
    expect(air.furnaceGaugePa).toBeLessThan(500);
    expect(air.flueFlowKgS).toBeCloseTo(air.airFlowKgS + 0.12, 12);
  });
});

type Parts = ReturnType<typeof dairyAirPath>['parameters'];
