import type { ClassPoll } from '../../../machines/class/index.ts';
import type { PollCounts, Said, Spoken } from '../../classroom/protocol/index.ts';
import type { Moment } from './ask-here.ts';

/** What a poll is asked with. */
export interface PollWays {
  /** The one that is open. */
  readonly poll: ClassPoll | null;
  readonly counts: PollCounts | null;
  /** How many are there to answer. */
  readonly here: number;
  say(entry: Spoken): Promise<Said>;
  /** Where the run stands that is looked at; null where none is open. */
  moment(): Moment | null;
}
