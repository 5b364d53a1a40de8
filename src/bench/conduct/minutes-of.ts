import type { DeskEntry } from '../../../machines/index.ts';
import type { PlantFile, PlantPart, TimedAction } from '../../engine/index.ts';
import type { Message } from '../message.ts';
import { arrivedS } from './arrived.ts';
import { checkSaid } from './check-said.ts';
import { ACT_MINUTES, checkOfWhat } from './tariff.ts';

export interface MinutesLine {
  readonly t: number;
  readonly what: Message;
  readonly minutes: number;
  /** Parts, in training units. */
  readonly cost: number;
}
export interface MinutesUsed {
  /** Minutes of plant time and of work. */
  readonly total: number;
  readonly lines: readonly MinutesLine[];
}

/** A second look at the same thing within this time is the same look, s. */
const SAME_LOOK_S = 60;
const PARTS_COST_OF = 'replace';
const SHEET = 'commissioning sheet';

/**
 * What a visit has taken up to `timeS`: the time that passed at the plant, and for each act and check
 * its minutes by tariff. A tool that stays at its place is charged once until something is repaired;
 * so is a topic.
 *
 * @param plant gives places their names; left out: they keep their ids
 */
export function minutesOf(
  log: readonly TimedAction[],
  desk: readonly DeskEntry[],
  parts: readonly PlantPart[],
  timeS: number,
  plant: PlantFile | null = null,
): MinutesUsed {
  const from = arrivedS(desk);
  const acts = actLines(
    log.filter(({ t }) => t >= from && t <= timeS),
    parts,
    plant,
  );
  const lines = [
    line(from, { code: 'conduct.minutes.plant' }, Math.max(0, timeS - from) / 60),
    ...[...acts, ...deskLines(desk)].sort((a, b) => a.t - b.t),
  ];
  return { total: lines.reduce((sum, { minutes }) => sum + minutes, 0), lines };
}

function actLines(
  log: readonly TimedAction[],
  parts: readonly PlantPart[],
  plant: PlantFile | null,
): MinutesLine[] {
  const lastS = new Map<string, number>();
  return log.flatMap((action): MinutesLine[] => {
    switch (action.type) {
      case 'check':
        return checkLines(action, lastS, plant);
      case 'repair': {
        const part = parts.find((one) => one.part === action.part);
        const minutes = part?.minutes[action.way];
        // Whatever was connected or wetted is so no longer; what was read is known.
        for (const key of lastS.keys()) if (!key.startsWith(SHEET)) lastS.delete(key);
        if (part === undefined || minutes === undefined) return [];
        const what = {
          code: 'conduct.minutes.repair',
          params: { part: action.part, way: action.way },
        };
        return [line(action.t, what, minutes, action.way === PARTS_COST_OF ? part.cost : 0)];
      }
      case 'stroke':
        return action.deg < 0 ? [] : [actLine(action)];
      case 'reset-limits':
        return action.pressed ? [actLine(action)] : [];
      default:
        return ACT_MINUTES[action.type] === undefined ? [] : [actLine(action)];
    }
  });
}

function checkLines(
  action: Extract<TimedAction, { type: 'check' }>,
  lastS: Map<string, number>,
  plant: PlantFile | null,
): MinutesLine[] {
  const { t, what, place, other } = action;
  const check = checkOfWhat(what, place);
  if (check === null) return [];
  const connection = `${what}|${place}|${other}`;
  const before = lastS.get(connection);
  lastS.set(connection, t);
  const stays = what.includes(': ') ? !what.startsWith('look') : !EACH_TIME.has(what);
  if (before !== undefined && (stays || t - before < SAME_LOOK_S)) return [];
  return [line(t, checkSaid(action, plant), check.minutes)];
}
const EACH_TIME = new Set(['look', 'listen', 'smell', 'decay test', 'leak test']);

function deskLines(desk: readonly DeskEntry[]): MinutesLine[] {
  const done = new Set<string>();
  return desk.flatMap((entry): MinutesLine[] => {
    if (entry.type !== 'ask' && entry.type !== 'read sheet') return [];
    const topic = entry.type === 'ask' ? entry.topic : '';
    const key = `${entry.type}|${topic}`;
    if (done.has(key)) return [];
    done.add(key);
    const what = { code: `conduct.minutes.${entry.type.replace(' ', '-')}`, params: { topic } };
    return [line(entry.t, what, checkOfWhat(entry.type)?.minutes ?? 0)];
  });
}

function actLine(action: TimedAction): MinutesLine {
  return line(action.t, { code: `conduct.minutes.${action.type}` }, ACT_MINUTES[action.type] ?? 0);
}

function line(t: number, what: Message, minutes: number, cost = 0): MinutesLine {
  return { t, what, minutes, cost };
}
