import {
  createToolState,
  lookedAt,
  readTool,
  type ToolRun,
  type ToolUse,
  toolUseOf,
} from '../../bench/index.ts';
import type { LookWhat, Run } from '../../engine/index.ts';
import { MOVING_LOOKS } from '../atlas/plan.ts';
import { lookReadings } from '../observe/look-readings.ts';
import { partsOfCheck, type Reading } from '../observe/reading.ts';
import { toolReadings } from '../observe/tool-readings.ts';
import {
  continuityReading,
  isLive,
  liveReading,
  voltsReading,
  type WirePlaces,
} from '../observe/wire-readings.ts';
import { type CheckAction, checkAsked } from './check-asked.ts';

/** Something that goes on telling once it was put there: a tool at its place, leads on wires, eyes. */
export interface Hanging {
  readonly check: string;
  /** What would take its place: the same tool there again, eyes on something else. */
  readonly slot: string;
  readonly sinceS: number;
  /** Before it has hung for so long its display is of the tool and not of the plant, s. */
  readonly warmsUpS: number;
  /** Takes what is there now; a few times a second, in the order of time. */
  glance(run: Run): void;
  /** What it has shown last. */
  told(): readonly Reading[];
  /** Whether it had settled by the last glance. */
  steady(): boolean;
}

export const EYES = 'eyes';
const WARMS_UP_S: Readonly<Partial<Record<ToolUse['tool'], number>>> = {
  'flue-gas analyser': 100,
  thermometer: 30,
  'leak spray': 12,
};
const SHOWS_S = 1.5;
/** A meter shows what it shows at once; leads on a circuit that was switched off wait until it has run out. */
const LEADS_SETTLE_S = 1;
const RUN_OUT_S = 8;

/**
 * Null where a check is over when it is done, as with ears, nose, paper, and what had to be opened.
 *
 * @param tail the newest frames of the run, for tools
 */
export function hangingOf(
  action: CheckAction,
  run: Run,
  tail: ToolRun,
  wires: WirePlaces,
): Hanging | null {
  const check = checkAsked(action, wires);
  const look = lookedAt({ action });
  if (look !== null) return eyesOn(check, look as LookWhat, action.t, run);
  const use = toolUseOf(action);
  if (use === null) return null;
  const slot = JSON.stringify([action.what, action.place, action.other]);
  if (use.tool === 'multimeter' && use.range !== 'amps') {
    return leadsOn(check, slot, action, wires);
  }
  return toolAt(check, slot, use, action.t, tail);
}

/** It follows each frame, so that what it has shown last is of the last one. */
function toolAt(check: string, slot: string, use: ToolUse, sinceS: number, tail: ToolRun): Hanging {
  const state = createToolState(use, sinceS);
  let steady = false;
  return {
    check,
    slot,
    sinceS,
    warmsUpS: WARMS_UP_S[use.tool] ?? SHOWS_S,
    glance() {
      steady = readTool(tail, use, state).steady;
    },
    told: () => toolReadings(use, readTool(tail, use, state)),
    steady: () => steady,
  };
}

/** Eyes stay on what moves until they go elsewhere; what was opened for a look is closed again. */
function eyesOn(check: string, what: LookWhat, sinceS: number, run: Run): Hanging | null {
  if (!MOVING_LOOKS.includes(what) || !run.lookPlaces().includes(what)) return null;
  const first = run.look(what);
  if (first === null || first.needsOpening) return null;
  let readings = lookReadings(first);
  return {
    check,
    slot: EYES,
    sinceS,
    warmsUpS: 0,
    glance(run) {
      const found = run.look(what);
      readings = found === null ? [] : lookReadings(found);
    },
    told: () => readings,
    steady: () => true,
  };
}

function leadsOn(
  check: string,
  slot: string,
  { place, other, t: sinceS }: CheckAction,
  wires: WirePlaces,
): Hanging {
  const { what, place: wire } = partsOfCheck(check);
  const isVolts = what === 'volts';
  let readings: readonly Reading[] = [];
  let heldS = 0;
  return {
    check,
    slot,
    sinceS,
    warmsUpS: 0,
    glance(run) {
      heldS = run.timeS() - sinceS;
      readings = isVolts
        ? voltsNow(run, wires, wire, place, other)
        : continuityNow(run, place, other);
    },
    told: () => readings,
    steady: () => heldS >= (isVolts ? LEADS_SETTLE_S : RUN_OUT_S),
  };
}

function voltsNow(
  run: Run,
  wires: WirePlaces,
  wire: string,
  place: string,
  other: string,
): readonly Reading[] {
  const read = run.meter({ kind: 'volts', from: place, to: other });
  const volts = read === null ? null : voltsReading(wires, place, other, read.value);
  if (read === null || volts === null) return [];
  return [volts, liveReading(wire, isLive(wires, wire, read.value))];
}

/** Ohms are resistance as well; on a circuit that is switched on neither means anything. */
function continuityNow(run: Run, place: string, other: string): readonly Reading[] {
  if (run.bench().supplyOn) return [];
  const read = run.meter({ kind: 'continuity', from: place, to: other });
  const reading = read === null ? null : continuityReading(place, other, read);
  return reading === null ? [] : [reading];
}
