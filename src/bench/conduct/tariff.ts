/**
 * What each way of finding out costs: minutes of an unhurried technician, and what may come of it.
 * Own training values. Time that the plant itself takes is not in them; it passes in the run.
 */
import { LOOK_WHATS, type TimedAction } from '../../engine/index.ts';
import { TOOLS, type Tool } from '../tools/index.ts';

export const RISKS = [
  'none',
  'live parts',
  'open circuit',
  'gas at the nipple',
  'hot surfaces',
  'moving parts',
  'burner off meanwhile',
] as const;
export type Risk = (typeof RISKS)[number];

/** A way of finding out. */
export interface Check {
  /** As an action `check` names it; `ask`, `read sheet`, `history` and `watch one start` are paper or patience. */
  readonly what: string;
  /** From having decided to do it to knowing. */
  readonly minutes: number;
  /** Something is opened, undone or moved for it. */
  readonly invasive: boolean;
  readonly risk: Risk;
}

const LOOK = 'look';
const NAMED_LOOK = 'look: ';
const LOOK_MINUTES = 1;
/** Looks for which something is opened first, and closed again. */
const INSIDE_MINUTES: Readonly<Record<string, number>> = {
  fuses: 2,
  'control relays': 3,
  'fan contactor': 4,
  'terminal strip': 3,
  lens: 6,
  'scanner sight line': 8,
  'flame rod': 10,
  belt: 6,
  electrode: 15,
  strainer: 30,
  flue: 15,
  'boiler passes': 30,
  'pilot burner': 25,
  nozzle: 30,
  diffuser: 30,
  'level probe': 40,
};

/** Boxes with live parts in them; the burner may run meanwhile. */
const LIVE_BOXES: ReadonlySet<string> = new Set([
  'fuses',
  'control relays',
  'fan contactor',
  'terminal strip',
]);

const TOOL_RISKS: Readonly<Record<Tool['id'], Pick<Check, 'invasive' | 'risk'>>> = {
  manometer: { invasive: true, risk: 'gas at the nipple' },
  multimeter: { invasive: false, risk: 'live parts' },
  'flame-signal meter': { invasive: true, risk: 'open circuit' },
  'flue-gas analyser': { invasive: false, risk: 'hot surfaces' },
  'leak spray': { invasive: false, risk: 'none' },
  strobe: { invasive: false, risk: 'moving parts' },
  thermometer: { invasive: false, risk: 'hot surfaces' },
  'mirror and torch': { invasive: true, risk: 'burner off meanwhile' },
};

const OTHERS: readonly Check[] = [
  { what: LOOK, minutes: LOOK_MINUTES, invasive: false, risk: 'none' },
  ...LOOK_WHATS.map((what): Check => {
    const inside = INSIDE_MINUTES[what];
    return inside === undefined
      ? { what: `${NAMED_LOOK}${what}`, minutes: LOOK_MINUTES, invasive: false, risk: 'none' }
      : {
          what: `${NAMED_LOOK}${what}`,
          minutes: inside,
          invasive: true,
          risk: LIVE_BOXES.has(what) ? 'live parts' : 'burner off meanwhile',
        };
  }),
  { what: 'listen', minutes: 1, invasive: false, risk: 'none' },
  { what: 'smell', minutes: 1, invasive: false, risk: 'none' },
  { what: 'ask', minutes: 2, invasive: false, risk: 'none' },
  { what: 'read sheet', minutes: 2, invasive: false, risk: 'none' },
  { what: 'commissioning sheet', minutes: 3, invasive: false, risk: 'none' },
  { what: 'history', minutes: 2, invasive: false, risk: 'none' },
  // It costs the time of the start, which the run counts.
  { what: 'watch one start', minutes: 0, invasive: false, risk: 'none' },
  { what: 'leak test', minutes: 6, invasive: false, risk: 'none' },
  { what: 'decay test', minutes: 10, invasive: true, risk: 'burner off meanwhile' },
  { what: 'stroke and compare', minutes: 4, invasive: true, risk: 'moving parts' },
];

/** Every way of finding out: each tool with each of its ranges, looks, ears, nose, people, paper. */
export const CHECKS: readonly Check[] = [
  ...TOOLS.flatMap(({ id, ranges, minutesToConnect }): Check[] =>
    (ranges.length === 0 ? [id] : ranges.map((range) => `${id}: ${range.id}`)).map((what) => ({
      what,
      minutes: minutesToConnect,
      ...(id === 'multimeter' && what.endsWith(': amps')
        ? { invasive: false, risk: 'none' as const }
        : TOOL_RISKS[id]),
    })),
  ),
  ...OTHERS,
];

/** What hands do beside checks and repairs, min; what is not here takes no time of its own. */
export const ACT_MINUTES: Readonly<Partial<Record<TimedAction['type'], number>>> = {
  supply: 1,
  lock: 2,
  'turn-cock': 1,
  jumper: 3,
  adjust: 5,
  stroke: 4,
  'reset-limits': 2,
};

/**
 * The row for a check of the log, a look by its place; null where nothing is known of it, and nothing
 * is charged.
 */
export function checkOfWhat(what: string, place = ''): Check | null {
  const name = what === LOOK && place !== '' ? `${NAMED_LOOK}${place}` : what;
  return (
    CHECKS.find((check) => check.what === name) ??
    CHECKS.find((check) => check.what.startsWith(`${name}: `)) ??
    (name.startsWith(NAMED_LOOK) ? checkOfWhat(LOOK) : null) ??
    null
  );
}
