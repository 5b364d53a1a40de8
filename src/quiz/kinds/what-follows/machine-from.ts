/** The machine alone, put where a record ends, and asked what it does were its inputs to stand so and so. */
import {
  createBurner,
  createSimulatedClock,
  STEPS,
  type StepName,
} from '../../../../machines/index.ts';
import type { RunSetup } from '../../../engine/index.ts';
import type { Outcome, StartRecord } from './start-record.ts';

export interface AtTheCut {
  readonly step: StepName;
  /** Place in the phases of the machine. */
  readonly phase: number;
}
export interface FromTheCut extends AtTheCut {
  /** Null where it stays in its step for longer than anyone would wait. */
  readonly outcome: Outcome | null;
}

/** A purge that is begun again and again is given up long before, s. */
const MOST_S = 700;

/**
 * @param cut frame at which the record ends
 * @param word what stands at the inputs from then on
 */
export function machineFrom(
  { plant, profile }: RunSetup,
  { words, sent, frameS }: StartRecord,
  cut: number,
  word: number,
): FromTheCut {
  const clock = createSimulatedClock();
  let next: Outcome | null = null;
  let cause: Outcome['cause'] = null;
  let isAsked = false;
  const burner = createBurner({
    variant: plant.variant,
    timings: profile.timings,
    clock,
    changes: (change) => {
      if (change.kind === 'lockout') cause = change.cause;
      if (change.kind !== 'step' || !isAsked || next !== null) return;
      next = { step: change.step, cause: change.step === 'lockout' ? cause : null };
    },
  });
  const cutMs = Math.round(cut * frameS * 1000);
  for (const one of sent) {
    if (one.tMs > cutMs) break;
    clock.advanceTo(one.tMs);
    burner.send(one.word);
  }
  clock.advanceTo(cutMs);
  const at = { step: STEPS[burner.step] as StepName, phase: burner.phase };
  isAsked = true;
  if (word !== words[cut]) burner.send(word);
  const endMs = cutMs + MOST_S * 1000;
  while (next === null && clock.nextDueMs <= endMs) clock.advanceTo(clock.nextDueMs);
  burner.stop();
  return { ...at, outcome: next };
}
