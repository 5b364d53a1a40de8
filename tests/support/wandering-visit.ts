import type { Hands } from './finished-work.ts';

/** The job of it: a strainer blocked with dirt from a new pipe. */
export const WANDERING_JOB = 'dairy-after-the-road-works';

/**
 * A long way round: a part renewed live on a guess, checks that tell nothing, a suspect that a reading
 * has cleared; then the two pressures that tell, and a mend without a leak test.
 */
export function wanderingVisit(hands: Hands): void {
  const { act, check, repair, write, wait, until } = hands;
  write({ type: 'arrive', tools: ['manometer', 'multimeter', 'leak spray'] });
  write({ type: 'begin' });
  write({ type: 'ask', topic: 'who was here' });
  write({ type: 'suspect', ranked: ['gas regulator', 'low-gas switch'] });
  check('multimeter: volts', 'L1', 'N');
  check('look', 'lens');
  repair('gas regulator', 'replace');
  act({ type: 'reset', pressed: true }, { type: 'reset', pressed: false });
  until('lockout');
  check('manometer: mid', 'strainer-inlet');
  act({ type: 'reset', pressed: true }, { type: 'reset', pressed: false });
  until('lockout');
  pin(hands, 'strainer-inlet', '199 mbar', 'main trial');
  write({ type: 'suspect', ranked: ['gas supply', 'strainer'] });
  check('manometer: mid', 'inlet');
  act({ type: 'reset', pressed: true }, { type: 'reset', pressed: false });
  until('lockout');
  pin(hands, 'inlet', '41 mbar', 'main trial');
  write({ type: 'suspect', ranked: ['strainer', 'gas regulator'] });
  write({ type: 'claim', part: 'strainer', why: [0, 1], mechanism: 'Dirt from the new pipe.' });
  act({ type: 'supply', on: false }, { type: 'lock', point: 'isolator', on: true });
  act({ type: 'turn-cock', cock: 'cock', opening: 0 });
  act({ type: 'lock', point: 'cock', on: true });
  repair('strainer', 'clean');
  act({ type: 'lock', point: 'cock', on: false });
  act({ type: 'turn-cock', cock: 'cock', opening: 1 });
  act({ type: 'lock', point: 'isolator', on: false }, { type: 'supply', on: true });
  write({ type: 'prove' });
  wait(5);
  act({ type: 'reset', pressed: true }, { type: 'reset', pressed: false });
  until('modulation');
  wait(90);
  write({
    type: 'hand over',
    cause: 'strainer: dirt from the new pipe',
    evidence: 'Good before it, falls behind it.',
    done: 'Strainer cleaned.',
    watch: 'Look at it again in a month.',
  });
  write({ type: 'close' });
}

function pin({ write }: Hands, place: string, reading: string, step: string): void {
  write({ type: 'pin', what: 'manometer', place, other: '', reading, step });
}
