import { describe, expect, it } from 'vitest';
import type { TimedAction } from '../../../src/engine/index.ts';
import { ARRIVE, at, CALL, handOver, judge, rulesOf } from './visit.ts';

/** The pilot valve of the dairy opens about 170 s after the call. */
const FIRED_S = 185;
const jumper = (t: number, from: string, to: string, on = true): TimedAction =>
  at(t, { type: 'jumper', from, to, on });
const airflow = (t: number, value: number): TimedAction =>
  at(t, { type: 'adjust', part: 'airflow switch', setting: 'switch point', value });
const limit = (t: number, value: number): TimedAction =>
  at(t, { type: 'adjust', part: 'high limit', setting: 'switch point', value });

describe('jumpers', () => {
  it('[SC-12] across what protects, with fuel on, is unsafe; out before the fuel it is right', () => {
    const log = [jumper(0.5, 'L1', '24'), CALL];
    expect(judge({ log, untilS: FIRED_S })).toMatchObject([
      { rule: 'SC-12', severity: 'unsafe', state: { params: { across: 'low gas' } } },
    ]);
    expect(rulesOf({ log: [...log, jumper(100, 'L1', '24', false)], untilS: FIRED_S })).toEqual([]);
  });
  it('[SC-12] put on while it burns is unsafe at that moment', () => {
    const found = judge({ log: [CALL, jumper(180, 'L1', '25')] });
    expect(found.map(({ rule, t }) => [rule, t])).toEqual([['SC-12', 180]]);
  });
  it('[SC-12] across what only asks for heat it bypasses nothing that protects', () => {
    const log = [jumper(0.5, '14', '15'), jumper(0.6, '13', '14'), CALL];
    expect(rulesOf({ log, untilS: FIRED_S })).toEqual([]);
  });
});

describe('settings', () => {
  it('[SC-13] fired with a proof that proves less is unsafe, on the other side it is not', () => {
    expect(judge({ log: [airflow(0.5, 15), CALL], untilS: FIRED_S })).toMatchObject([
      { rule: 'SC-13', severity: 'unsafe', what: { params: { side: 'lower' } } },
    ]);
    expect(rulesOf({ log: [airflow(0.5, 62), CALL], untilS: FIRED_S })).toEqual([]);
  });
  it('[SC-13] put back before the fuel it is right, and as near as a dial can be set', () => {
    const log = [airflow(0.5, 15), CALL, airflow(100, 49)];
    expect(rulesOf({ log, untilS: FIRED_S })).toEqual([]);
  });
  it('[SC-13] a limit turned down while it burns proves it; turned up it protects less', () => {
    expect(rulesOf({ log: [CALL, limit(190, 1.2e6)], untilS: 191 })).toEqual([]);
    expect(rulesOf({ log: [CALL, limit(190, 1.45e6)], untilS: 191 })).toEqual(['SC-13']);
  });
  it('[SC-13] handed over beyond the sheet is unsafe without a flame too', () => {
    const desk = [ARRIVE, handOver(10)];
    expect(rulesOf({ log: [limit(5, 1.45e6)], desk })).toEqual(['SC-13']);
    expect(rulesOf({ log: [limit(5, 1.45e6), limit(8, 1.35e6)], desk })).toEqual([]);
  });
  it('[SC-13] a dial on which no safety rests may be set anyhow', () => {
    const log = [
      at(5, { type: 'adjust', part: 'firing-rate control', setting: 'setpoint', value: 9e5 }),
    ];
    expect(rulesOf({ log, desk: [ARRIVE, handOver(10)] })).toEqual([]);
  });
});

describe('servos', () => {
  const stroke = (t: number, deg: number) => at(t, { type: 'stroke', servo: 'damper', deg });
  it('[SC-14] held by hand while fuel is on is unsafe, at rest it is right', () => {
    expect(rulesOf({ log: [CALL, stroke(185, 60)], untilS: 185 })).toEqual(['SC-14']);
    expect(rulesOf({ log: [stroke(2, 60), stroke(30, -1)] })).toEqual([]);
  });
});
