/** What else the machine would do from where a record ends, and at which inputs it would have to see it. */
import {
  describePhase,
  INPUT_BITS,
  INPUTS,
  type InputName,
} from '../../../../machines/burner/index.ts';
import type { RunSetup } from '../../../engine/index.ts';
import { machineFrom } from './machine-from.ts';
import { isSameOutcome, type Outcome, type StartRecord } from './start-record.ts';

export interface OtherOutcome {
  readonly outcome: Outcome;
  /** Inputs that stand otherwise than it would take; none: it would take that nothing moves any more. */
  readonly flips: readonly InputName[];
  /** How near at hand it is. */
  readonly likeness: number;
}

/** They say what people do, not what the plant does. */
const OF_PEOPLE: ReadonlySet<InputName> = new Set([
  'callForHeat',
  'resetPressed',
  'emergencyStopClear',
]);
const UNMET = 3;
const WAITED_FOR = 2;
const OTHERS = 0.9;
/** Mains out of band stop any step. */
const OF_THE_SUPPLY: ReadonlySet<InputName> = new Set(['supplyInBand', 'controlFuseMade']);
const TWO = 0.8;

/** Each once, the nearest at hand first; never `right`. */
export function otherOutcomes(
  setup: RunSetup,
  record: StartRecord,
  cut: number,
  phase: number,
  right: Outcome,
): readonly OtherOutcome[] {
  const word = record.words[cut] as number;
  const waits = describePhase(phase, setup.plant.variant).waitsFor;
  const isMade = (input: InputName) => (word & INPUT_BITS[input]) !== 0;
  const waited = waits.map(({ input }) => input);
  const unmet = waits.filter(({ input, wanted }) => isMade(input) !== wanted);
  const worthOf = (input: InputName) =>
    unmet.some((one) => one.input === input)
      ? UNMET
      : waited.includes(input)
        ? WAITED_FOR
        : OF_THE_SUPPLY.has(input)
          ? 0
          : OTHERS;
  const found: OtherOutcome[] = [];
  const tryOut = (flips: readonly InputName[], likeness: number) => {
    const flipped = flips.reduce((all, input) => all ^ INPUT_BITS[input], word);
    const { outcome } = machineFrom(setup, record, cut, flipped);
    if (outcome === null || isSameOutcome(outcome, right)) return;
    if (!found.some((one) => isSameOutcome(one.outcome, outcome))) {
      found.push({ outcome, flips, likeness });
    }
  };
  tryOut([], UNMET);
  if (unmet.length > 1)
    tryOut(
      unmet.map(({ input }) => input),
      UNMET,
    );
  const all = INPUTS.filter((input) => !OF_PEOPLE.has(input));
  const inOrder = [...all].sort((a, b) => worthOf(b) - worthOf(a));
  for (const input of inOrder) tryOut([input], worthOf(input));
  for (const { input } of unmet) {
    for (const other of waited) if (other !== input) tryOut([input, other], TWO);
  }
  return found.sort((a, b) => b.likeness - a.likeness);
}
