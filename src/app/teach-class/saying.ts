import type { InstructorClient, Said, Spoken } from '../../classroom/index.ts';
import { say as sentence } from '../../i18n/index.ts';
import { errorText } from '../class/code-words.ts';
import type { Store } from '../session/store.ts';

/** What is told of the last thing that was said; empty where all went well. */
export interface TeachNotice {
  readonly text: string;
}

/** Tells the class one thing after another. */
export type Saying = (...entries: readonly Spoken[]) => Promise<boolean>;

/** What is not taken is said in words, and what stands there from before is wiped. */
export function createSaying(client: InstructorClient, notice: Store<TeachNotice>): Saying {
  return async (...entries) => {
    const answers = await Promise.all(entries.map((entry) => client.say(entry)));
    const refused = answers.find((answer) => !answer.ok);
    notice.write({ text: refused === undefined ? '' : refusalText(refused) });
    return refused === undefined;
  };
}

function refusalText(said: Said): string {
  if (said.ok) return '';
  return sentence('teach-class.not-taken', { why: errorText(said.error) });
}
