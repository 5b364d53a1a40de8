import { createToolState, readTool, type ToolRun, type ToolState } from '../../bench/index.ts';
import {
  BITS_A_WORD,
  createRun,
  HEARD_WHATS,
  type Heard,
  type LookReading,
  type LookWhat,
  type Run,
  type RunSetup,
} from '../../engine/index.ts';
import { dialReadings } from '../observe/dial-readings.ts';
import { heardReadings, lookReadings, smellReading } from '../observe/look-readings.ts';
import { AT_REST, IN_SERVICE, ISOLATED, LOCKED_OUT, STANDING } from '../observe/moment.ts';
import { durationReading, historyReadings, panelReadings } from '../observe/panel-readings.ts';
import { checkName, type Reading, type ReadingValue } from '../observe/reading.ts';
import { toolReadings } from '../observe/tool-readings.ts';
import {
  continuityReading,
  isLive,
  liveReading,
  voltsReading,
  type WirePlaces,
} from '../observe/wire-readings.ts';
import { AFTER_LOCKOUT_S, CALL_S, IN_SERVICE_S, MOVING_LOOKS, type Plan } from './plan.ts';

/** What every check tells of one plant in every situation, by `keyName`. */
export type Sample = ReadonlyMap<string, ReadingValue>;

/** Eyes and ears are asked this often; what they had last before a step ended is what they had of it. */
const GLANCE_S = 0.5;
const QUIET_GLANCE_S = 2;
const JOINTS = 'gas joints';
/** Until what was driven by the supply has come to rest, s. */
const ISOLATED_S = 8;

export function keyName(check: string, moment: string, aspect: string): string {
  return `${check}@${moment}#${aspect}`;
}
export function partsOfKey(name: string): { check: string; moment: string; aspect: string } {
  const at = name.indexOf('@');
  const hash = name.indexOf('#', at);
  return {
    check: name.slice(0, at),
    moment: name.slice(at + 1, hash),
    aspect: name.slice(hash + 1),
  };
}

interface Glance {
  /** Eyes on joints that have been wetted. */
  readonly spray: LookReading | null;
  readonly looks: ReadonlyMap<LookWhat, LookReading>;
  readonly heard: readonly Heard[];
  readonly smell: number;
}
interface Passed {
  readonly moment: string;
  readonly fromS: number;
  readonly toS: number;
  readonly ended: boolean;
  readonly glance: Glance;
}

/** A situation of a start, and when it was, s. */
export interface MomentPassed {
  readonly moment: string;
  readonly fromS: number;
  readonly toS: number;
}

/** Starts a plant by the script and takes every reading. */
export function takeSample(setup: RunSetup, plan: Plan): Sample {
  return sampleStart(setup, plan).sample;
}

/** The same, with the situations that the start came through, each once, in their order. */
export function sampleStart(
  setup: RunSetup,
  plan: Plan,
): { readonly sample: Sample; readonly passed: readonly MomentPassed[] } {
  const run = createRun(setup);
  const sample = new Map<string, ReadingValue>();
  const put = (moment: string, readings: readonly (Reading | null)[]) => {
    for (const one of readings) {
      if (one !== null) sample.set(keyName(one.check, moment, one.aspect), one.value);
    }
  };
  const passed = watchStart(run, plan, (moment) => put(moment, voltsOf(run, plan.wires)));
  readTools(run, plan, passed, put);
  for (const { moment, fromS, toS, ended, glance } of passed) {
    put(moment, [
      ...[...glance.looks.values()].flatMap(lookReadings),
      ...heardReadings(glance.heard, HEARD_WHATS),
      smellReading(glance.smell),
    ]);
    if (ended && moment !== AT_REST) put(moment, [durationReading(toS - fromS)]);
  }
  put(LOCKED_OUT, historyReadings(run.status()));
  const { step } = run.status();
  put(STANDING, [
    { check: checkName('watch one start'), aspect: 'ends in', value: step },
    ...dialReadings(run.settings()),
    ...stillLooks(run),
  ]);
  isolate(run, plan.wires, put);
  return { sample, passed };
}

/** Runs to the end of the script; a step that comes twice is known by its first time. */
function watchStart(run: Run, plan: Plan, atEnd: (moment: string) => void): readonly Passed[] {
  const passed: Passed[] = [];
  let moment = AT_REST;
  let fromS = 0;
  let glance = glanceAt(run);
  let endS = plan.untilS;
  const close = (toS: number, ended: boolean) => {
    if (passed.some((one) => one.moment === moment)) return;
    // One that locks out by itself was never at rest.
    if (moment === AT_REST && toS < CALL_S - GLANCE_S) return;
    passed.push({ moment, fromS, toS, ended, glance });
  };
  for (let t = GLANCE_S; t <= endS + 1e-9; t += GLANCE_S) {
    run.advanceTo(t);
    const { step, sinceS, lockout } = run.status();
    const now = lockout !== null ? LOCKED_OUT : t <= CALL_S ? AT_REST : step;
    if (now !== moment) {
      const sinceNow = moment === AT_REST && step === 'standby' ? CALL_S : sinceS;
      close(sinceNow, true);
      moment = now;
      fromS = sinceNow;
      if (now === LOCKED_OUT) endS = Math.min(endS, t + AFTER_LOCKOUT_S);
      if (now === IN_SERVICE) endS = Math.min(endS, t + IN_SERVICE_S);
    }
    if (!isQuiet(moment, t, endS)) glance = glanceAt(run);
    if (t === CALL_S - GLANCE_S) atEnd(AT_REST);
  }
  close(run.timeS(), false);
  atEnd(moment);
  return passed;
}

/** Little moves at rest and in service: fewer looks are as good as all of them. */
function isQuiet(moment: string, t: number, endS: number): boolean {
  if (moment === AT_REST) return t < CALL_S - GLANCE_S;
  return moment === IN_SERVICE && t < endS - GLANCE_S && t % QUIET_GLANCE_S !== 0;
}

function glanceAt(run: Run): Glance {
  const looks = new Map<LookWhat, LookReading>();
  for (const what of MOVING_LOOKS) {
    const found = run.look(what);
    if (found !== null) looks.set(what, found);
  }
  const spray = run.look(JOINTS, { spray: true });
  return { spray, looks, heard: run.listen(), smell: run.smell() };
}

/** Tools that were connected before the start, read as each step ends. */
function readTools(
  run: Run,
  plan: Plan,
  passed: readonly Passed[],
  put: (moment: string, readings: readonly Reading[]) => void,
): void {
  const states = plan.uses.map((use): [typeof use, ToolState] => [use, createToolState(use, 0)]);
  const { channels } = run;
  const words = channels.flatMap(({ id }, i) => (id.startsWith('wiring.live.') ? [i] : []));
  for (const { moment, toS, glance } of passed) {
    // The last frame before the step's end.
    const frames = Math.min(run.frameCount(), Math.max(1, Math.ceil(toS / run.frameS - 1e-6)));
    const view: ToolRun = {
      ...run,
      frameCount: () => frames,
      timeS: () => (frames - 1) * run.frameS,
      look: (what) => (what === JOINTS ? glance.spray : (glance.looks.get(what) ?? null)),
    };
    const frame = run.frame(frames - 1);
    put(
      moment,
      states.flatMap(([use, state]) => toolReadings(use, readTool(view, use, state))),
    );
    put(moment, panelReadings(channels, frame));
    put(
      moment,
      plan.wires.wires.map((wire, i) => {
        const word = frame[words[Math.floor(i / BITS_A_WORD)] as number] as number;
        return liveReading(wire, ((word >> (i % BITS_A_WORD)) & 1) === 1);
      }),
    );
  }
}

function voltsOf(run: Run, places: WirePlaces): readonly (Reading | null)[] {
  return places.wires.flatMap((wire) => {
    const other = places.neutralOf.get(wire) ?? 'earth';
    const read = run.meter({ kind: 'volts', from: wire, to: other });
    if (read === null) return [];
    return [
      voltsReading(places, wire, other, read.value),
      liveReading(wire, isLive(places, wire, read.value)),
    ];
  });
}

function stillLooks(run: Run): readonly Reading[] {
  return run.lookPlaces().flatMap((what) => {
    const found = MOVING_LOOKS.includes(what) ? null : run.look(what);
    return found === null ? [] : lookReadings(found);
  });
}

/** Supply off: each element from wire to wire, then by itself. */
function isolate(
  run: Run,
  { elements }: WirePlaces,
  put: (moment: string, readings: readonly (Reading | null)[]) => void,
): void {
  run.act({ type: 'supply', on: false });
  run.advanceTo(run.timeS() + ISOLATED_S);
  const between = (from: string, to: string) => {
    const read = run.meter({ kind: 'continuity', from, to });
    return read === null ? null : continuityReading(from, to, read);
  };
  put(
    ISOLATED,
    elements.flatMap(({ name, from, to }) =>
      from === to ? [] : [between(from, to), between(`${name}:1`, `${name}:2`)],
    ),
  );
}
