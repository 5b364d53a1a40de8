import { PANEL_CHANNELS } from '../../bench/index.ts';
import type { Run, RunStatus } from '../../engine/index.ts';
import { checkName, type Reading } from './reading.ts';

/** Inputs of the controller that a word of a frame holds. */
const INPUT_BITS = 30;
const WORDS: ReadonlySet<string> = new Set([
  'logic.inputs',
  'logic.commands',
  'logic.step',
  'logic.target',
]);
/** It is set by the people who take the heat, not by what is wrong. */
const LEFT_OUT: ReadonlySet<string> = new Set(['vessel.load', 'firing.rate']);

/** What the panel shows while a start is watched: each input, and its own instruments. */
export function panelReadings(channels: Run['channels'], frame: Float64Array): readonly Reading[] {
  const check = checkName('watch one start');
  return channels.flatMap(({ id }, i): Reading[] => {
    if (!PANEL_CHANNELS.includes(id) || LEFT_OUT.has(id)) return [];
    const value = frame[i] as number;
    if (id === 'logic.inputs') {
      return Array.from({ length: INPUT_BITS }, (_, bit) => ({
        check,
        aspect: `input ${bit}`,
        value: ((value >> bit) & 1) === 1 ? 'made' : 'open',
      }));
    }
    return WORDS.has(id) ? [] : [{ check, aspect: id, value }];
  });
}

/** What the panel keeps of a lockout. */
export function historyReadings({ lockout, lockoutStep }: RunStatus): readonly Reading[] {
  if (lockout === null) return [];
  const check = checkName('history');
  return [
    { check, aspect: 'cause', value: lockout },
    { check, aspect: 'step', value: lockoutStep ?? '' },
  ];
}

/** How long a step took that has ended, s. */
export function durationReading(seconds: number): Reading {
  return { check: checkName('watch one start'), aspect: 'duration', value: seconds };
}
