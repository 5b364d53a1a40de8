/** One thing that is done, in words and as acts: what an option is made of. */
import type { DeskEntry } from '../../../../machines/index.ts';
import type { Action, TimedAction } from '../../../engine/index.ts';
import type { Statement } from '../../item/statement.ts';

export interface Deed {
  /** Behind the beginning of its step, s. */
  readonly afterS: number;
  readonly act: Action | 'hand over';
  /** It is said of these volts that there are none. */
  readonly saidDead?: boolean;
}
export interface Step {
  readonly says: Statement;
  readonly deeds: readonly Deed[];
  readonly lastsS: number;
}

/** A course of steps in time, as a log and a desk log. */
export interface Laid {
  readonly log: readonly TimedAction[];
  readonly desk: readonly DeskEntry[];
  readonly untilS: number;
  /** Times of volts that are said to be none. */
  readonly saidDeadS: readonly number[];
}

/** @param arrivedS when the learner comes; the first step begins a second later */
export function layOut(arrivedS: number, steps: readonly Step[]): Laid {
  const log: TimedAction[] = [];
  const desk: DeskEntry[] = [{ t: arrivedS, type: 'arrive', tools: [] }];
  const saidDeadS: number[] = [];
  let fromS = arrivedS + 1;
  for (const { deeds, lastsS } of steps) {
    for (const { afterS, act, saidDead = false } of deeds) {
      const t = toStep(fromS + afterS);
      if (saidDead) saidDeadS.push(t);
      if (act === 'hand over') {
        desk.push({ t, type: 'hand over', cause: '', evidence: '', done: '', watch: '' });
      } else log.push({ t, ...act });
    }
    fromS = toStep(fromS + lastsS);
  }
  return { log, desk, untilS: fromS, saidDeadS };
}

/** Times of a log are multiples of a hundredth. */
function toStep(tS: number): number {
  return Math.round(tS * 100) / 100;
}
