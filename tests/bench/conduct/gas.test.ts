import { describe, expect, it } from 'vitest';
import { sayMessage } from '../../../src/i18n/index.ts';
import {
  ARRIVE,
  at,
  CALL,
  check,
  cock,
  gasOff,
  gasOn,
  handOver,
  judge,
  lock,
  repair,
  rulesOf,
  supply,
  withFault,
} from './visit.ts';

const WORK = repair(5, 'strainer', 'clean');
/** The pilot valve of the dairy opens about 170 s after the call. */
const FIRED_S = 185;
const spray = (t: number, place: string) => check(t, 'leak spray', place);

describe('the gas train', () => {
  it('[SC-5] opened with its cock open is unsafe, shut and locked it is right', () => {
    expect(judge({ log: [WORK] })).toMatchObject([{ rule: 'SC-5', t: 5, severity: 'unsafe' }]);
    expect(rulesOf({ log: [...gasOff(4), WORK] })).toEqual([]);
  });
  it('[SC-5] a cock shut part of the way lets gas through', () => {
    expect(rulesOf({ log: [cock(4, 0.2), WORK] })).toEqual(['SC-5']);
  });
  it('[SC-5] the shut-off valves of the train are no isolation', () => {
    expect(rulesOf({ log: [repair(5, 'main gas nozzle', 'clean')] })).toContain('SC-5');
  });
  it('[SC-5] a look for which the pipe is opened opens it', () => {
    const look = check(5, 'look', 'strainer');
    expect(rulesOf({ log: [look] })).toEqual(['SC-5']);
    expect(rulesOf({ log: [...gasOff(4), look] })).toEqual([]);
    expect(rulesOf({ log: [check(5, 'look', 'manual cock')] })).toEqual([]);
  });
  it('[SC-5] drawing a joint tighter opens nothing', () => {
    expect(rulesOf({ log: [repair(5, 'strainer joint', 'tighten')] })).toEqual([]);
    expect(rulesOf({ log: [repair(5, 'strainer joint', 'refit')] })).toEqual(['SC-5']);
  });
  it('[SC-6] behind a cock without a lock is careless', () => {
    expect(judge({ log: [cock(4, 0), WORK] })).toMatchObject([
      { rule: 'SC-6', severity: 'careless' },
    ]);
    expect(rulesOf({ log: [cock(5, 0), lock(5, 'cock'), WORK] })).toEqual([]);
  });
  it('[SC-7] fuel let in with its joints untested is unsafe, tested under pressure it is right', () => {
    const opened = [...gasOff(4), WORK, ...gasOn(6), { ...CALL, t: 7 }];
    expect(judge({ log: opened, untilS: FIRED_S })).toMatchObject([{ rule: 'SC-7' }]);
    const tested = [...opened, spray(20, 'strainer-inlet'), spray(20, 'inlet')];
    expect(rulesOf({ log: tested, untilS: FIRED_S })).toEqual([]);
    expect(rulesOf({ log: tested.slice(0, -1), untilS: FIRED_S })).toEqual(['SC-7']);
  });
  it('[SC-7] a joint that only the fuel brings under pressure is not asked for before', () => {
    const log = [...gasOff(4), repair(5, 'burner joint', 'refit'), ...gasOn(6), { ...CALL, t: 7 }];
    expect(rulesOf({ log, untilS: FIRED_S })).toEqual([]);
  });
  it('[SC-8] handed over untested is unsafe; tested under pressure it is right', () => {
    const opened = [...gasOff(4), WORK, ...gasOn(6)];
    const desk = [ARRIVE, handOver(40)];
    expect(rulesOf({ log: opened, desk })).toEqual(['SC-8']);
    const tested = [...opened, spray(20, 'strainer-inlet'), spray(20, 'inlet')];
    expect(rulesOf({ log: tested, desk })).toEqual([]);
  });
  it('[SC-8] a part opened twice is handed over untested once, and its joints have names', () => {
    const log = [...gasOff(4), WORK, repair(6, 'strainer', 'clean'), ...gasOn(8)];
    const found = judge({ log, desk: [ARRIVE, handOver(40)] });
    expect(found.map(({ rule, state }) => [rule, sayMessage(state)])).toEqual([
      [
        'SC-8',
        'joints were never tested with gas pressure behind them: those between cock and strainer, behind the strainer',
      ],
    ]);
  });
  it('[SC-8] a spray before the work, or without pressure behind it, tests nothing', () => {
    const desk = [ARRIVE, handOver(60)];
    const before = [spray(3, 'strainer-inlet'), spray(3, 'inlet')];
    const opened = [...gasOff(4), WORK, ...gasOn(6)];
    expect(rulesOf({ log: [...before, ...opened], desk })).toEqual(['SC-8']);
    const atNozzle = [...gasOff(4), repair(5, 'burner joint', 'refit'), ...gasOn(6)];
    expect(rulesOf({ log: [...atNozzle, spray(20, 'nozzle-inlet')], desk })).toEqual(['SC-8']);
  });
  it('[SC-8] a joint at the burner is tested while it burns', () => {
    const log = [
      ...gasOff(4),
      repair(5, 'burner joint', 'refit'),
      ...gasOn(6),
      { ...CALL, t: 7 },
      spray(230, 'nozzle-inlet'),
    ];
    expect(rulesOf({ log, desk: [ARRIVE, handOver(260)] })).toEqual([]);
  });
});

describe('a smell of gas', () => {
  const leak = withFault('gas escapes at the regulator joint', 4000);
  it('[SC-11] makes switching unsafe, in a room without gas the same is right', () => {
    const log = [supply(5, false)];
    expect(judge({ setup: leak, log })).toMatchObject([{ rule: 'SC-11', severity: 'unsafe' }]);
    expect(rulesOf({ log })).toEqual([]);
  });
  it('[SC-11] counts calling, resetting, jumpers and electrical work, not the emergency stop', () => {
    const acts = [
      at(5, { type: 'call-for-heat', on: true }),
      at(6, { type: 'reset', pressed: true }),
      at(7, { type: 'jumper', from: 'L1', to: '24', on: true }),
      at(8, { type: 'emergency-stop', pressed: true }),
    ];
    expect(rulesOf({ setup: leak, log: acts })).toEqual(['SC-11', 'SC-11', 'SC-11']);
    expect(rulesOf({ setup: leak, log: [repair(5, 'fan contactor', 'clean')] })).toContain('SC-11');
  });
  it('[SC-11] has gone once the cock is shut and the air has changed', () => {
    expect(rulesOf({ setup: leak, log: [cock(5, 0), supply(600, false)] })).toEqual([]);
  });
});
