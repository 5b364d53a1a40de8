import type { RunEvent } from '../engine/index.ts';
import { NOTHING_TO_ADD, type Phrase, phrase } from './phrase.ts';
import type { Expectation } from './start-pieces.ts';

/** What a run did not do of what its scenario promises; empty when the promise was kept. */
export function checkExpectation(events: readonly RunEvent[], expected: Expectation): Phrase[] {
  const inTime = events.filter((event) => event.t <= expected.by);
  const steps = inTime.filter((event) => event.type === 'step').map((event) => event.step);
  const broken: Phrase[] = [];

  if (expected.reaches !== undefined && !steps.includes(expected.reaches)) {
    const { reaches: step, by } = expected;
    broken.push(phrase('expectation.not-reached', { step, by, last: steps.at(-1) ?? 'standby' }));
  }
  let from = 0;
  for (const step of expected.steps ?? []) {
    const at = steps.indexOf(step, from);
    if (at < 0) {
      broken.push(
        phrase('expectation.step-missing', { step, by: expected.by, passed: steps.join(' → ') }),
      );
      break;
    }
    from = at + 1;
  }
  const lockout = events.find((event) => event.type === 'lockout');
  if (expected.lockout === 'none') {
    if (lockout !== undefined) {
      const { t, cause, step } = lockout;
      broken.push(phrase('expectation.unwanted-lockout', { at: t, cause, step }));
    }
    return broken;
  }
  const { cause, step } = expected.lockout;
  if (lockout === undefined) {
    broken.push(phrase('expectation.no-lockout', { cause, step }));
  } else if (lockout.cause !== cause || lockout.step !== step || lockout.t > expected.by) {
    const found = { at: lockout.t, foundCause: lockout.cause, foundStep: lockout.step };
    const late = lockout.t > expected.by ? phrase('expectation.late') : NOTHING_TO_ADD;
    broken.push(
      phrase('expectation.other-lockout', { cause, step, by: expected.by, ...found, late }),
    );
  }
  return broken;
}
