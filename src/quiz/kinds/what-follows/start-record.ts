/** A start as the sequence went through it: its steps, and what stood at the inputs all the time. */
import {
  type Cause,
  INPUT_BITS,
  INPUTS,
  type StepName,
} from '../../../../machines/burner/index.ts';
import { createRun, PROOF_WORDS, type Run, type RunSetup } from '../../../engine/index.ts';

export interface PassedStep {
  readonly step: StepName;
  readonly fromS: number;
  readonly toS: number;
  readonly next: Outcome;
}

/** What a step ends in: another step, or a lockout with its cause. */
export interface Outcome {
  readonly step: StepName;
  readonly cause: Cause | null;
}

export interface StartRecord {
  /** In their order; the one in which the record ends is not among them. */
  readonly passed: readonly PassedStep[];
  readonly frameS: number;
  /** Packed inputs of each frame. */
  readonly words: Int32Array;
  /** The same as they changed, to the step of the run. */
  readonly sent: readonly { readonly tMs: number; readonly word: number }[];
  /** Of each channel asked for, its value in each frame. */
  readonly traces: Readonly<Record<string, Float64Array>>;
}
/** With the run that it was taken of. */
export interface TakenStart {
  readonly record: StartRecord;
  readonly run: Run;
}

/** How far a record goes on at a time, s. */
const PIECE_S = 5;
/** What follows a lockout is of no interest, s. */
const AFTER_S = 1;
/** How long a burner in service is watched, s. */
const IN_SERVICE_S = 60;

/**
 * @param channels to be kept as traces
 * @param isEnough ends the record early; asked every few seconds
 */
export function recordStart(
  setup: RunSetup,
  serviceS: number,
  channels: readonly string[],
  isEnough: (passed: readonly PassedStep[]) => boolean = () => false,
): TakenStart {
  const run = createRun(setup);
  const untilS = serviceS + IN_SERVICE_S;
  while (run.timeS() < untilS && run.status().lockout === null) {
    run.advanceTo(run.timeS() + PIECE_S);
    if (isEnough(passedOf(run.events()))) break;
  }
  run.advanceTo(run.timeS() + AFTER_S);
  return { record: recordOf(run, channels), run };
}

/** What a run that was kept whole has come to. */
export function recordOf(run: Run, channels: readonly string[]): StartRecord {
  const count = run.frameCount();
  const placeOf = (id: string) => run.channels.findIndex((one) => one.id === id);
  const inputs = placeOf('logic.inputs');
  const words = new Int32Array(count);
  const places = channels.map(placeOf);
  const traces = channels.map(() => new Float64Array(count));
  for (let k = 0; k < count; k++) {
    const frame = run.frame(k);
    words[k] = frame[inputs] as number;
    places.forEach((place, i) => {
      (traces[i] as Float64Array)[k] = frame[place] ?? Number.NaN;
    });
  }
  return {
    passed: passedOf(run.events()),
    frameS: run.frameS,
    words,
    sent: sentIn(run.events(), words[0] ?? 0),
    traces: Object.fromEntries(channels.map((id, i) => [id, traces[i] as Float64Array])),
  };
}

function passedOf(events: ReturnType<Run['events']>): PassedStep[] {
  const steps = events.flatMap((event) => (event.type === 'step' ? [event] : []));
  const causeAt = (atS: number): Cause | null => {
    const lockout = events.find((event) => event.type === 'lockout' && event.t === atS);
    return lockout?.type === 'lockout' ? lockout.cause : null;
  };
  return steps.slice(0, -1).map(({ step, t }, i) => {
    const next = steps[i + 1] as (typeof steps)[number];
    const cause = next.step === 'lockout' ? causeAt(next.t) : null;
    return { step, fromS: t, toS: next.t, next: { step: next.step, cause } };
  });
}

function sentIn(events: ReturnType<Run['events']>, first: number): StartRecord['sent'] {
  const sent: { tMs: number; word: number }[] = [{ tMs: 0, word: first }];
  for (const event of events) {
    if (event.type !== 'proved' && event.type !== 'lost') continue;
    const bit = BIT_OF.get(event.what) ?? 0;
    const tMs = Math.round(event.t * 1000);
    const last = sent[sent.length - 1] as (typeof sent)[number];
    const word = event.type === 'proved' ? last.word | bit : last.word & ~bit;
    if (last.tMs === tMs && tMs > 0) last.word = word;
    else sent.push({ tMs, word });
  }
  return sent;
}
const BIT_OF = new Map(INPUTS.map((input) => [PROOF_WORDS[input], INPUT_BITS[input]] as const));

export function isSameOutcome(a: Outcome, b: Outcome): boolean {
  return a.step === b.step && a.cause === b.cause;
}
