import { describe, expect, it } from 'vitest';
import { sayMessage } from '../../../src/i18n/index.ts';
import {
  ARRIVE,
  at,
  cock,
  gasOff,
  gasOn,
  handOver,
  judge,
  lock,
  rulesOf,
  supply,
} from './visit.ts';

const desk = [ARRIVE, handOver(60)];

describe('the handover', () => {
  it('[SC-17] with a jumper left is unsafe, with it out again it is right', () => {
    const on = at(5, { type: 'jumper', from: 'L1', to: '24', on: true });
    const off = at(20, { type: 'jumper', from: '24', to: 'L1', on: false });
    const [left, ...more] = judge({ log: [on], desk });
    expect(left).toMatchObject({ rule: 'SC-17', t: 60, severity: 'unsafe' });
    expect(more).toEqual([]);
    expect(left && sayMessage(left.state)).toBe('a jumper still lay between wire L1 and wire 24');
    expect(rulesOf({ log: [on, off], desk })).toEqual([]);
  });
  it('[SC-17] is judged when it is made: a jumper taken out after it was left', () => {
    const on = at(5, { type: 'jumper', from: 'L1', to: '24', on: true });
    const off = at(80, { type: 'jumper', from: 'L1', to: '24', on: false });
    expect(rulesOf({ log: [on, off], desk: [...desk, handOver(90)] })).toEqual(['SC-17']);
  });
  it('[SC-18] with a lock, an isolator off or a cock shut is careless, all put back it is right', () => {
    const isolated = [supply(5, false), lock(6, 'isolator')];
    expect(judge({ log: isolated, desk }).map(({ rule, severity }) => [rule, severity])).toEqual([
      ['SC-18', 'careless'],
    ]);
    expect(rulesOf({ log: [cock(5, 0)], desk })).toEqual(['SC-18']);
    const back = [...isolated, lock(20, 'isolator', false), supply(21, true)];
    expect(rulesOf({ log: back, desk })).toEqual([]);
    expect(rulesOf({ log: [...gasOff(5), ...gasOn(20)], desk })).toEqual([]);
  });
  it('[SC-18] what is shut and locked is one thing left, and has the name it has at the plant', () => {
    const left = judge({ log: [...gasOff(5), supply(7, false)], desk });
    expect(left.map(({ state }) => sayMessage(state))).toEqual([
      'the manual gas cock stood less open than it was found, with a lock still on it',
      'the mains isolator was off',
    ]);
  });
  it('[SC-18] what is put back in the same instant is back', () => {
    const log = [...gasOff(5), ...gasOn(60)];
    expect(rulesOf({ log, desk })).toEqual([]);
  });
  it('[SC-18] with a servo held by hand is unsafe', () => {
    const held = at(5, { type: 'stroke', servo: 'damper', deg: 40 });
    expect(judge({ log: [held], desk })).toMatchObject([{ rule: 'SC-18', severity: 'unsafe' }]);
    const gone = at(50, { type: 'stroke', servo: 'damper', deg: -1 });
    expect(rulesOf({ log: [held, gone], desk })).toEqual([]);
  });
});
