/** Parts that statements of every kind have in common. */
import { msOfISO } from '../../quiz/taking/index.ts';
import { idOfName } from '../name-id.ts';
import {
  iriPath,
  LANGUAGE,
  STATEMENT_VERSION,
  type XapiSettings,
  type XapiStatement,
} from './statement.ts';

const VERBS = 'http://adlnet.gov/expapi/verbs';
export const PLATFORM = 'Flamewright';

/** Who, and a name of the statement that follows from who did what and when. */
export function headOfStatement(
  { actor, homepage, version }: Omit<XapiSettings, 'finished'>,
  parts: readonly string[],
): Pick<XapiStatement, 'id' | 'actor' | 'version'> {
  const { homePage, name, nickname } = actor;
  const path = iriPath([homePage, name, ...parts]);
  return {
    id: idOfName(`${homepage}/statements/${path}`),
    actor: {
      objectType: 'Agent' as const,
      ...(nickname === undefined ? {} : { name: nickname }),
      account: { homePage, name },
    },
    version: STATEMENT_VERSION[version],
  };
}

export function verb(name: string): XapiStatement['verb'] {
  return { id: `${VERBS}/${name}`, display: { [LANGUAGE]: name } };
}

/** From the beginning to the end, pauses included; none where a clock was put back. */
export function durationOf(fromISO: string, toISO: string): { readonly duration?: string } {
  const seconds = Math.round((msOfISO(toISO) - msOfISO(fromISO)) / 1000);
  return seconds >= 0 ? { duration: `PT${seconds}S` } : {};
}
