import type { Case } from './case.ts';
import { tablesOf } from './case-tables.ts';
import type { Reasoning } from './reasoning.ts';
import { roundsOf } from './rounds-of-case.ts';

type Ideal = Pick<Reasoning, 'ideal' | 'alike'>;

/** The best way through this very plant, and what cannot be told from its cause. */
export function idealWay(theCase: Case): Ideal {
  const { own } = theCase;
  const { parts, atlas } = tablesOf(theCase);
  const rounds = roundsOf(theCase);
  const namesOf = (fault: string | null) =>
    parts.names[atlas.causes.findIndex((one) => one.fault === fault)] ?? [];
  const ownNames = new Set((own.length === 0 ? [null] : own).flatMap((one) => [...namesOf(one)]));
  const others = rounds.flatMap(({ inseparable }) =>
    inseparable.flatMap((fault) => namesOf(fault).slice(0, 1)),
  );
  return {
    ideal: rounds.flatMap(({ path }) =>
      path.map(({ check, moment, minutes, bits, share, told }) => ({
        check,
        moment,
        minutes,
        bits,
        share,
        told: told.map(({ aspect, word }) => ({ aspect, word })),
      })),
    ),
    alike: [...new Set(others)].filter((part) => !ownNames.has(part)),
  };
}
