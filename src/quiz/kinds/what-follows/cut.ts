/** Where a record ends, just before something happens, and what is to be seen there of what will happen. */
import {
  describePhase,
  INPUT_BITS,
  INPUTS,
  type InputName,
} from '../../../../machines/burner/index.ts';
import { type InputReading, inputReadings, type RunSetup } from '../../../engine/index.ts';
import { machineFrom } from './machine-from.ts';
import { isSameOutcome, type Outcome, type PassedStep, type StartRecord } from './start-record.ts';

export interface Heading {
  readonly input: InputName;
  readonly reading: InputReading & { readonly channel: string; readonly limit: number };
  readonly value: number;
}
export interface Cut {
  readonly passed: PassedStep;
  /** How many times the step had been entered before. */
  readonly before: number;
  readonly frame: number;
  /** Since the step was entered, s. */
  readonly sinceS: number;
  /** Place in the phases of the machine. */
  readonly phase: number;
  readonly right: Outcome;
  /** It comes of what stands at the inputs already, and of time alone. */
  readonly standing: boolean;
  /** Inputs that change between the cut and what happens. */
  readonly changes: readonly InputName[];
  /** Numbers that are seen on their way to where such an input changes. */
  readonly heading: readonly Heading[];
}

/** Something has to have stood so long to be seen, s. */
const SEEN_S = 1;
/** A trend is looked at over this, s, and has to come so much of the way nearer. */
const TREND_S = 2;
const NEARER = 0.03;
/** What is as good as there is not on its way, as a share of where it goes. */
const APART = 0.02;
/** These do not hang on the start, or only in the steps that ask for them. */
const BESIDE: ReadonlySet<InputName> = new Set([
  'callForHeat',
  'resetPressed',
  'warmUpSatisfied',
  'interspaceEmpty',
  'interspaceFull',
  'positionsOnCurve',
  'speedOnCurve',
  'airChangesCounted',
]);

/** @returns null where nothing at the cut shows what will happen */
export function cutBefore(
  setup: RunSetup,
  record: StartRecord,
  place: number,
  leadS: number,
): Cut | null {
  const passed = record.passed[place];
  if (passed === undefined) return null;
  const frame = Math.floor((passed.toS - leadS) / record.frameS + 1e-6);
  const first = Math.ceil(passed.fromS / record.frameS - 1e-6);
  if (frame <= first) return null;
  const word = record.words[frame] as number;
  const now = machineFrom(setup, record, frame, word);
  if (now.step !== passed.step) return null;
  const standing = now.outcome !== null && isSameOutcome(now.outcome, passed.next);
  const asked = watchedInputs(setup, now.phase);
  const changes = changesOf(record, frame, Math.ceil(passed.toS / record.frameS - 1e-6)).filter(
    (input) => asked.includes(input),
  );
  const heading = standing ? [] : headingOf(setup, record, frame, first, changes);
  if (standing ? !hasStood(record, frame, asked) : heading.length === 0) return null;
  const before = record.passed.slice(0, place).filter(({ step }) => step === passed.step).length;
  return {
    passed,
    before,
    frame,
    sinceS: frame * record.frameS - passed.fromS,
    phase: now.phase,
    right: passed.next,
    standing,
    changes,
    heading,
  };
}

/** Inputs that tell one state of a start from another in this phase. */
export function watchedInputs({ plant }: RunSetup, phase: number): readonly InputName[] {
  const waited = describePhase(phase, plant.variant).waitsFor.map(({ input }) => input);
  return INPUTS.filter((input) => !BESIDE.has(input) || waited.includes(input));
}

function changesOf({ words }: StartRecord, from: number, to: number): readonly InputName[] {
  let changed = 0;
  for (let k = from + 1; k <= to && k < words.length; k++) {
    changed |= (words[k] as number) ^ (words[from] as number);
  }
  return INPUTS.filter((input) => (changed & INPUT_BITS[input]) !== 0);
}

function hasStood(
  { words, frameS }: StartRecord,
  frame: number,
  asked: readonly InputName[],
): boolean {
  const mask = asked.reduce((all, input) => all | INPUT_BITS[input], 0);
  const from = Math.max(0, frame - Math.round(SEEN_S / frameS));
  for (let k = from; k < frame; k++) {
    if ((((words[k] as number) ^ (words[frame] as number)) & mask) !== 0) return false;
  }
  return true;
}

function headingOf(
  { plant, profile }: RunSetup,
  { traces, frameS }: StartRecord,
  frame: number,
  first: number,
  changes: readonly InputName[],
): readonly Heading[] {
  const readings = inputReadings(plant, profile);
  const from = Math.max(first, frame - Math.round(TREND_S / frameS));
  return changes.flatMap((input): Heading[] => {
    const { channel, limit, ...rest } = readings[input];
    if (channel === null || limit === null) return [];
    const trace = traces[channel];
    if (trace === undefined) return [];
    const value = trace[frame] as number;
    const way = Math.abs((trace[from] as number) - limit);
    const left = Math.abs(value - limit);
    if (!(left < way * (1 - NEARER)) || left < APART * Math.abs(limit)) return [];
    return [{ input, value, reading: { channel, limit, ...rest } }];
  });
}
