import { describe, expect, it } from 'vitest';
import {
  AT_REST,
  type Decision,
  decisionsOf,
  ISOLATED,
  LOCKED_OUT,
  type Plan,
  STANDING,
} from '../../../src/diagnosis/index.ts';
import type { TimedAction } from '../../../src/engine/index.ts';
import type { Visit } from '../../support/robot.ts';
import { checksIn, robotOn, toldBy, watchesIn } from './real-visits.ts';

/** Wire off at the pilot valve: it locks out in the pilot trial, and did before anybody came. */
const PILOT = 'laundry-evening-wash';
const MANIFOLD = 'manometer|manifold';
const PILOT_GAS = 'manometer|pilot';
const WATCH = 'watch one start|';

function decided(visit: Visit, plan: Plan, log: readonly TimedAction[] = visit.log) {
  return decisionsOf(visit.setup, log, visit.desk, visit.untilS, plan);
}
function kinds(decisions: readonly Decision[]): string[] {
  return decisions.map(({ kind }) => kind);
}
function momentsOf(one: { readonly seen: readonly { readonly moment: string }[] } | undefined) {
  return [...new Set(one?.seen.map(({ moment }) => moment))];
}

describe('arriving', () => {
  const { robot, plan, setup } = robotOn(PILOT);
  robot.wait(1);
  const decisions = decided(robot.visit(), plan);

  it('is the first decision, at its own time, and the only one of somebody who does nothing', () => {
    expect(kinds(decisions)).toEqual(['arrive']);
    expect(decisions[0]?.t).toBe(setup.arriveAt);
  });
  it('shows the lockout that stands, and in what the start has ended', () => {
    expect(toldBy(decisions, 'history|', LOCKED_OUT)).toEqual({
      cause: 'pilot not lit',
      step: 'pilot trial',
    });
    expect(toldBy(decisions, WATCH, STANDING)).toEqual({ 'ends in': 'lockout' });
  });
  it('shows the inputs on the panel as they stand then', () => {
    expect(toldBy(decisions, WATCH, LOCKED_OUT)['input 0']).toMatch(/^(made|open)$/);
  });
  it('is of nobody where nobody arrived', () => {
    const visit = robot.visit();
    expect(decisionsOf(visit.setup, visit.log, [], visit.untilS, plan)).toEqual([]);
  });
  it('has not happened before its time', () => {
    const { setup, log, desk } = robot.visit();
    expect(decisionsOf(setup, log, desk, setup.actions.length, plan)).toEqual([]);
  });
});

describe('a visit with a tool left on, a start watched, eyes on the glass', () => {
  const { robot, plan } = robotOn(PILOT);
  robot.check(PILOT_GAS);
  robot.check('look|sight glass');
  robot.wait(5);
  robot.check('listen|');
  robot.start();
  robot.start();
  const visit = robot.visit();
  const decisions = decided(visit, plan);
  const [first, second, ...further] = watchesIn(decisions);
  const steps = ['at-rest check', 'drive to purge', 'purge', 'drive to light-off', 'spark check'];

  it('has one decision a check and one a start, the watched start when it has come to its end', () => {
    expect(kinds(decisions)).toEqual(['arrive', 'check', 'check', 'check', 'watch', 'watch']);
    const lockouts = visit.log.filter(({ type }) => type === 'reset').length;
    expect(lockouts).toBeGreaterThan(0);
    expect(further).toEqual([]);
  });
  it('tells of a tool at once what it shows where it was put on', () => {
    const [gauge] = checksIn(decisions);
    expect(gauge?.check).toBe(PILOT_GAS);
    expect(gauge?.seen[0]?.moment).toBe(LOCKED_OUT);
    expect(gauge?.seen[0]?.readings.length).toBeGreaterThan(0);
  });
  it('tells of a tool left on at every step that each start passed', () => {
    for (const watch of [first, second]) {
      const moments = watch?.seen.flatMap(({ moment, readings }) =>
        readings.some(({ check }) => check === PILOT_GAS) ? [moment] : [],
      );
      expect(moments).toEqual(
        expect.arrayContaining([AT_REST, ...steps, 'pilot trial', LOCKED_OUT]),
      );
    }
  });
  it('names with the check itself the steps of the start that it was put there for', () => {
    const [gauge] = checksIn(decisions);
    expect(momentsOf(gauge)).toEqual(expect.arrayContaining([LOCKED_OUT, ...steps]));
    expect(gauge?.seen.slice(1).flatMap(({ readings }) => readings)).toEqual([]);
  });
  it('tells of eyes what they saw last in each step', () => {
    expect(toldBy([first as Decision], 'look|sight glass', 'pilot trial').words).toContain(
      'look.flame.none',
    );
  });
  it('tells of ears what they heard at that instant, and no more', () => {
    const listened = checksIn(decisions).find(({ check }) => check === 'listen|');
    expect(momentsOf(listened)).toEqual([LOCKED_OUT]);
    const heardLater = watchesIn(decisions).flatMap(({ seen }) =>
      seen.flatMap(({ readings }) => readings.filter(({ check }) => check === 'listen|')),
    );
    expect(heardLater).toEqual([]);
  });
  it('tells of each step that ended how long it took, and of none that did not', () => {
    const durations = first?.seen.flatMap(({ moment, readings }) =>
      readings.some(({ aspect }) => aspect === 'duration') ? [moment] : [],
    );
    expect(durations).toEqual(expect.arrayContaining([...steps, 'pilot trial']));
    expect(durations).not.toContain(LOCKED_OUT);
    expect(durations).not.toContain(AT_REST);
  });
  it('tells at the end of each start what the panel keeps of it', () => {
    for (const watch of [first, second]) {
      expect(toldBy([watch as Decision], 'history|', LOCKED_OUT).cause).toBe('pilot not lit');
    }
  });
  it('comes out the same again, and with or without what the setup brought', () => {
    const own = new Set(visit.setup.actions.map((action) => JSON.stringify(action)));
    const mine = visit.log.filter((action) => !own.has(JSON.stringify(action)));
    expect(mine.length).toBeLessThan(visit.log.length);
    expect(decided(visit, plan)).toEqual(decisions);
    expect(decided(visit, plan, mine)).toEqual(decisions);
  });
  it('is plain data', () => {
    expect(JSON.parse(JSON.stringify(decisions))).toEqual(decisions);
  });
  it('is in the order of time', () => {
    const times = decisions.map(({ t }) => t);
    expect(times).toEqual([...times].sort((a, b) => a - b));
  });
  it('up to a moment is what it had been until then', () => {
    const untilS = (first?.t ?? 0) + 1;
    const part = decisionsOf(visit.setup, visit.log, visit.desk, untilS, plan);
    expect(kinds(part)).toEqual(['arrive', 'check', 'check', 'check', 'watch']);
    expect(part.at(-1)).toEqual(first);
  });
});

describe('what was done before anybody came', () => {
  const { robot, plan, setup } = robotOn(PILOT);
  robot.wait(5);
  const visit = robot.visit();
  const before: TimedAction[] = [
    { t: setup.arriveAt - 20, type: 'check', what: 'listen', place: '', other: '' },
    { t: setup.arriveAt - 10, type: 'repair', part: 'pilot burner', way: 'clean' },
  ];
  const log = [...visit.log, ...before].sort((a, b) => a.t - b.t);

  it('is no decision of the learner', () => {
    expect(kinds(decided(visit, plan, log))).toEqual(['arrive']);
  });
});

describe('with the supply off', () => {
  const { robot, plan } = robotOn(PILOT);
  robot.wait(1);
  robot.check('volts|L1');
  robot.wait(3);
  robot.isolate(() => {
    robot.check('continuity|20|L1');
    robot.check('volts|L1');
    robot.wait(12);
  });
  robot.wait(3);
  robot.check('continuity|20|L1');
  robot.wait(12);
  const decisions = decided(robot.visit(), plan);

  it('a reading is of the isolated plant', () => {
    expect(toldBy(decisions, 'continuity|20|L1', ISOLATED)).toEqual({ value: 'through' });
    expect(toldBy(decisions, 'volts|L1', ISOLATED).live).toBe('dead');
  });
  it('volts are read where they stand before', () => {
    expect(toldBy(decisions, 'volts|L1', LOCKED_OUT).live).toBe('live');
  });
  it('continuity tells nothing while it is on', () => {
    const last = checksIn(decisions).at(-1);
    expect(last?.check).toBe('continuity|20|L1');
    expect(last?.seen).toEqual([]);
  });
});

describe('what is done on paper and with hands', () => {
  const { robot, plan } = robotOn(PILOT);
  const { write, hands } = robot;
  write({ type: 'ask', topic: 'habits' });
  write({ type: 'read sheet' });
  robot.wait(1);
  robot.check('commissioning sheet|');
  robot.check('history|');
  robot.check(MANIFOLD);
  robot.wait(5);
  robot.pin(MANIFOLD);
  robot.check('volts|L1');
  robot.wait(5);
  robot.pin('volts|L1');
  robot.check('look|panel switches');
  robot.pin('look|panel switches');
  write({ type: 'suspect', ranked: ['pilot valve', 'pilot valve coil'] });
  write({ type: 'claim', part: 'pilot valve coil', why: [0, 1, 2], mechanism: '' });
  hands.act({ type: 'repair', part: 'pilot valve coil', way: 'replace' });
  hands.act({ type: 'adjust', part: 'low-gas switch', setting: 'switch point', value: 3000 });
  hands.act({ type: 'adjust', part: 'low-gas switch', setting: 'switch point', value: 3100 });
  write({ type: 'withdraw' });
  const decisions = decided(robot.visit(), plan);

  it('comes in its order, a dial that is turned on and on once', () => {
    expect(decisions.map((one) => [one.kind, whatOf(one)].join(' '))).toEqual([
      'arrive ',
      'ask habits',
      'ask read sheet',
      'check commissioning sheet|',
      'check history|',
      `check ${MANIFOLD}`,
      'check volts|L1',
      'check look|panel switches',
      'suspect pilot valve,pilot valve coil',
      'claim pilot valve coil',
      'work pilot valve coil: replace',
      'work low-gas switch: adjust',
      'withdraw ',
    ]);
  });
  it('maps each pin to its check and moment, as an atlas names them', () => {
    const claim = decisions.find(({ kind }) => kind === 'claim');
    expect(claim?.kind === 'claim' && claim.why).toEqual([
      { check: MANIFOLD, moment: LOCKED_OUT },
      { check: 'volts|L1', moment: LOCKED_OUT },
      { check: 'look|panel switches', moment: STANDING },
    ]);
  });
  it('reads dials where they stand, and the last lockout from the panel', () => {
    const dials = toldBy(decisions, 'commissioning sheet|', STANDING);
    expect(Object.keys(dials)).toContain('low-gas switch, switch point');
    const history = checksIn(decisions).find(({ check }) => check === 'history|');
    expect(history?.seen[0]?.readings.map(({ value }) => value)).toEqual([
      'pilot not lit',
      'pilot trial',
    ]);
  });
});

function whatOf(one: Decision): string {
  switch (one.kind) {
    case 'ask':
      return one.topic;
    case 'check':
      return one.check;
    case 'suspect':
      return one.ranked.join();
    case 'claim':
      return one.part;
    case 'work':
      return `${one.part}: ${one.way}`;
    default:
      return '';
  }
}

describe('what was left wrong', () => {
  it('is work where it is put right: an emergency stop that stands pressed', () => {
    const { robot, plan } = robotOn('laundry-dead-after-cleaning');
    robot.check('look|panel switches');
    robot.hands.act({ type: 'emergency-stop', pressed: false });
    robot.start();
    const decisions = decided(robot.visit(), plan);
    expect(decisions.filter(({ kind }) => kind === 'work')).toEqual([
      { t: expect.any(Number), kind: 'work', part: 'emergency stop', way: 'adjust' },
    ]);
    expect(toldBy(decisions, 'look|panel switches', STANDING).words).toContain(
      'look.panel.emergency-stop-in',
    );
    expect(toldBy(watchesIn(decisions).slice(-1), WATCH, STANDING)).toEqual({
      'ends in': 'modulation',
    });
  });
  it('is a cock that stood part shut, and no cock that was shut for the work', () => {
    const { robot, plan, setup } = robotOn('laundry-after-the-new-pipe');
    const cock = setup.plant.gasTrain.edges.find(({ kind }) => kind === 'cock')?.id ?? '';
    const turn = (opening: number) => robot.hands.act({ type: 'turn-cock', cock, opening });
    for (const opening of [0, 1, 0, 1]) turn(opening);
    const work = decided(robot.visit(), plan).filter(({ kind }) => kind === 'work');
    expect(work).toHaveLength(1);
    expect(work[0]).toMatchObject({ part: 'manual gas cock', way: 'adjust' });
  });
  it('is a selector that stands at low fire', () => {
    const { robot, plan } = robotOn('dairy-never-gets-to-pressure');
    robot.hands.act({ type: 'firing', mode: 'automatic', rate: 0 });
    robot.hands.act({ type: 'firing', mode: 'automatic', rate: 0 });
    const work = decided(robot.visit(), plan).filter(({ kind }) => kind === 'work');
    expect(work).toEqual([
      { t: expect.any(Number), kind: 'work', part: 'firing-rate selector', way: 'adjust' },
    ]);
  });
});
