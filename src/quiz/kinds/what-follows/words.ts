import {
  describePhase,
  describeStep,
  INPUT_BITS,
  INPUTS,
  type InputName,
  STEPS,
  type StepName,
} from '../../../../machines/burner/index.ts';
import { type Told, WATCH_A_START } from '../../../diagnosis/index.ts';
import type { Option } from '../../item/item.ts';
import type { QuizPlant } from '../../item/maker.ts';
import type { Statement, Term } from '../../item/statement.ts';
import type { Cut } from './cut.ts';
import type { OtherOutcome } from './other-outcomes.ts';
import type { Outcome } from './start-record.ts';

/** After fuel has been shut. */
const WAYS_DOWN: ReadonlySet<StepName> = new Set(['run down', 'post-purge', 'standby']);

/** What happens, as the machine says it. Going on and locking out are outcomes alike: a list of one thing. */
export function saysOutcome(from: StepName, { step, cause }: Outcome): Statement {
  const outcome: Statement =
    cause !== null
      ? {
          code: 'quiz.follows.locks-out',
          with: { cause: { is: 'word', of: 'cause', word: cause } },
        }
      : { code: codeOf(from, step), with: { step: { is: 'step', step } } };
  return {
    code: 'quiz.follows.option',
    with: { outcome: { is: 'list', of: [{ is: 'statement', statement: outcome }] } },
  };
}

function codeOf(from: StepName, to: StepName): string {
  if (WAYS_DOWN.has(to)) return 'quiz.follows.goes-down';
  return STEPS.indexOf(to) > STEPS.indexOf(from)
    ? 'quiz.follows.goes-on'
    : 'quiz.follows.goes-back';
}

export function inputTerm(input: InputName, made: boolean): Term {
  return { is: 'word', of: 'input', word: input, suffix: made ? '' : '.not' };
}

/** Inputs as the panel shows them where the record ends. */
export function toldInputs(step: StepName, word: number, inputs: readonly InputName[]): Told[] {
  return inputs.map((input) => {
    const said = isMade(word, input) ? 'made' : 'open';
    const aspect = `input ${INPUTS.indexOf(input)}`;
    return { check: WATCH_A_START, moment: step, aspect, value: said, word: said };
  });
}

export function isMade(word: number, input: InputName): boolean {
  return (word & INPUT_BITS[input]) !== 0;
}

/** The start so far: where it is, for how long, and how long the machine lets it be there. */
export function cutTells(
  { sound }: Pick<QuizPlant, 'sound'>,
  { passed, sinceS, phase, heading }: Cut,
): Statement[] {
  const { plant, profile } = sound;
  const { limit, lasts } = describePhase(phase, plant.variant);
  const step: Term = { is: 'step', step: passed.step };
  const time = (value: number): Term => ({ is: 'amount', value, of: 'time' });
  const here: Statement = {
    code: 'quiz.follows.here',
    with: { plant: plant.title, step, since: time(Math.round(10 * sinceS) / 10) },
  };
  const timing: Statement[] =
    limit !== null && limit !== lasts
      ? [{ code: 'quiz.follows.limit', with: { limit: time(profile.timings[limit]) } }]
      : lasts !== null
        ? [{ code: 'quiz.follows.lasts', with: { lasts: time(profile.timings[lasts]) } }]
        : [];
  const moving = heading.slice(0, 1).map(
    ({ value, reading: { channel, limit, kind } }): Statement => ({
      code: 'quiz.follows.moves',
      with: {
        what: { is: 'word', of: 'app.channel', word: channel },
        value: { is: 'amount', value, of: kind },
        limit: { is: 'amount', value: limit, of: kind },
      },
    }),
  );
  return [here, ...timing, ...moving];
}

export function rightOption({ sound }: Pick<QuizPlant, 'sound'>, cut: Cut, word: number): Option {
  const { passed, phase, right, standing, changes, sinceS } = cut;
  const after: Term = { is: 'amount', value: passed.toS - passed.fromS - sinceS, of: 'time' };
  const waits = describePhase(phase, sound.plant.variant).waitsFor;
  const missing = waits.filter(({ input, wanted }) => isMade(word, input) !== wanted);
  const why = whyRight();
  const described = describeStep(passed.step, sound.plant.variant);
  const purpose: Statement[] = described === undefined ? [] : [{ code: described.purpose }];
  const input = (standing ? missing[0]?.input : changes[0]) ?? waits[0]?.input;
  const told = input === undefined ? [] : toldInputs(passed.step, word, [input]);
  return {
    says: saysOutcome(passed.step, right),
    why: [why, ...purpose],
    share: null,
    decidedBy: told[0] ?? null,
    atS: passed.toS,
  };

  function whyRight(): Statement {
    if (!standing) {
      const of = changes.map((input) => inputTerm(input, !isMade(word, input)));
      return { code: 'quiz.follows.changes', with: { inputs: { is: 'list', of }, after } };
    }
    if (missing.length === 0) return { code: 'quiz.follows.all-there', with: { after } };
    const of = missing.map(({ input, wanted }) => inputTerm(input, !wanted));
    return { code: 'quiz.follows.missing', with: { inputs: { is: 'list', of }, after } };
  }
}

/** One that would come of something else: what would have to be seen, and what is seen. */
export function otherOption(cut: Cut, word: number, { outcome, flips }: OtherOutcome): Option {
  const { passed, changes } = cut;
  const seen = flips.map((input) => inputTerm(input, isMade(word, input)));
  const wanted = flips.map((input) => inputTerm(input, !isMade(word, input)));
  const coming = changes.map((input) => inputTerm(input, !isMade(word, input)));
  const why: Statement =
    flips.length === 0
      ? { code: 'quiz.follows.if-still', with: { inputs: { is: 'list', of: coming } } }
      : {
          code: 'quiz.follows.would-need',
          with: { wanted: { is: 'list', of: wanted }, seen: { is: 'list', of: seen } },
        };
  const [told] = toldInputs(passed.step, word, [...flips, ...changes].slice(0, 1));
  return {
    says: saysOutcome(passed.step, outcome),
    why: [why],
    share: null,
    decidedBy: told ?? null,
    atS: null,
  };
}
