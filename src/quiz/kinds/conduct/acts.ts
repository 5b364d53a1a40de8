/** The steps that courses are made of. */
import { jointWords, lookPlaceName, type Message } from '../../../bench/index.ts';
import type { Action, LookWhat, RepairWay } from '../../../engine/index.ts';
import type { Statement, Term } from '../../item/statement.ts';
import type { Deed, Step } from './step.ts';

/** So long hands take for what needs no waiting, s. */
const BY_HAND_S = 10;
const ISOLATOR = 'isolator';
const COCK = 'cock';

const supply = (on: boolean): Action => ({ type: 'supply', on });
const lock = (point: string, on: boolean): Action => ({ type: 'lock', point, on });
const turn = (opening: number): Action => ({ type: 'turn-cock', cock: COCK, opening });
const callFor = (on: boolean): Action => ({ type: 'call-for-heat', on });

export const isolatorOff = step('isolator-off', [supply(false)]);
export const isolatorOn = step('isolator-on', [supply(true)]);
export const lockOff = step('lock-off', [supply(false), lock(ISOLATOR, true)]);
export const unlockOnly = step('unlock-only', [lock(ISOLATOR, false)]);
export const backOn = step('back-on', [lock(ISOLATOR, false), supply(true)]);

export const cockShut = step('cock-shut', [turn(0)]);
export const lockShut = step('lock-shut', [turn(0), lock(COCK, true)]);
export const cockBack = step('cock-back', [lock(COCK, false), turn(1)], 90);
export const cockHalf = step('cock-half', [lock(COCK, false), turn(0.5)], 90);
export const lockOpen = step('lock-open', [lock(COCK, true)]);

export const stop = step('stop', [{ type: 'emergency-stop', pressed: true }]);
export const stopOut = step('stop-out', [{ type: 'emergency-stop', pressed: false }]);
export const burnerOff = step('burner-off', [callFor(false)]);
export const burnerOn = step('burner-on', [callFor(true)]);
export const history = step('history', [check('history')]);
export const smell = step('smell', [check('smell')]);
export const handOver = leaving('hand-over');

/** Pressed and let go; then the controller goes on for so long, s. */
export function reset(lastsS = BY_HAND_S, code = 'reset'): Step {
  return {
    says: { code: codeOf(code) },
    deeds: [
      { afterS: 0, act: { type: 'reset', pressed: true } },
      { afterS: 1, act: { type: 'reset', pressed: false } },
    ],
    lastsS,
  };
}

/** A start that is watched until it is in service. */
export function start(lastsS: number): Step {
  return step('start', [callFor(true)], lastsS);
}

export function wait(code: string, lastsS: number): Step {
  return step(code, [], lastsS);
}

export function leaving(code: string): Step {
  return { says: { code: codeOf(code) }, deeds: [{ afterS: 1, act: 'hand over' }], lastsS: 3 };
}

export function repair(part: string, way: RepairWay): Step {
  const wayWord: Term = { is: 'word', of: 'quiz.conduct.way', word: way };
  return step('repair', [{ type: 'repair', part, way }], BY_HAND_S, { part, way: wayWord });
}

/** Volts are measured, and it is said that there are none. */
export function findDead(place: string, other: string): Step {
  const made = step('find-dead', [check('multimeter: volts', place, other)], BY_HAND_S, {
    place: { is: 'place', place, tool: 'multimeter' },
    other: { is: 'place', place: other, tool: 'multimeter' },
  });
  return { ...made, deeds: made.deeds.map((deed): Deed => ({ ...deed, saidDead: true })) };
}

export function meterAcross(range: 'volts' | 'ohms' | 'continuity', device: string): Step {
  const act = check(`multimeter: ${range}`, `${device}:1`, `${device}:2`);
  return step(`meter-${range}`, [act], BY_HAND_S, { device: deviceTerm(device) });
}

export function spray(nodes: readonly string[]): Step {
  const joints = nodes.map(
    (node): Term => ({ is: 'statement', statement: stated(jointWords(node)) }),
  );
  const acts = nodes.map((node) => check('leak spray', node));
  return step('spray', acts, 20 * nodes.length, { joints: { is: 'list', of: joints } });
}

export function lookAt(what: LookWhat): Step {
  return step('look', [check('look', what)], BY_HAND_S, {
    place: { is: 'statement', statement: stated(lookPlaceName(what)) },
  });
}

export const seeValvesShut = step('see-shut', [
  check('look', 'upstream valve indicator'),
  check('look', 'downstream valve indicator'),
]);

/** Clipped on or taken off with the isolator off meanwhile. */
export function jumper(device: string, on: boolean): Step {
  const act: Action = { type: 'jumper', from: `${device}:1`, to: `${device}:2`, on };
  const acts = [supply(false), act, supply(true)];
  return step(on ? 'jumper-on' : 'jumper-off', acts, 20, { device: deviceTerm(device) });
}

export function set(
  code: string,
  { part, setting }: { readonly part: string; readonly setting: string },
  value: number,
): Step {
  return step(code, [{ type: 'adjust', part, setting, value }], BY_HAND_S, { part });
}

export function holdServo(servo: string, deg: number): Step {
  const code = deg < 0 ? 'let-go' : 'hold';
  return step(code, [{ type: 'stroke', servo, deg }], BY_HAND_S, { servo: wordsOf(servo) });
}

/** The message of another part of the program, as a statement. */
export function stated({ code, params = {} }: Message): Statement {
  const places = Object.entries(params).map(([name, value]): [string, Term] => {
    if (typeof value === 'string' || typeof value === 'number') return [name, value];
    if ('code' in value) return [name, { is: 'statement', statement: stated(value) }];
    return [name, { is: 'list', of: value }];
  });
  return places.length === 0 ? { code } : { code, with: Object.fromEntries(places) };
}

/** A contact by what it is called at the plant. */
export function deviceTerm(device: string): Term {
  return { is: 'word', of: 'told.device', word: wordsOf(device) };
}

/** 'high-limit' → 'high limit'. */
export function wordsOf(id: string): string {
  return id.replace(/[-.]/g, ' ');
}

function step(
  code: string,
  acts: readonly Action[],
  lastsS = BY_HAND_S,
  places?: Readonly<Record<string, Term>>,
): Step {
  return {
    says: places === undefined ? { code: codeOf(code) } : { code: codeOf(code), with: places },
    deeds: acts.map((act, place) => ({ afterS: 2 * place, act })),
    lastsS: Math.max(lastsS, 2 * acts.length),
  };
}

function check(what: string, place = '', other = ''): Action {
  return { type: 'check', what, place, other };
}

function codeOf(code: string): string {
  return `quiz.conduct.act.${code}`;
}
