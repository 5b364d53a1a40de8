/** Why a cause is it, or is not: by the readings. */
import { NOT_REACHED, type Told } from '../../../diagnosis/index.ts';
import type { Refuting } from '../../evidence/refuting.ts';
import type { Statement, Term } from '../../item/statement.ts';

/** A sentence for each reading. */
export function whyItIs(told: readonly Told[]): readonly Statement[] {
  return told.map((one) => ({
    code: 'quiz.cause.fits',
    with: { reading: { is: 'reading', told: one } },
  }));
}

/** @param cause what the reading rules out, as the sentence has it */
export function whyNot({ told, instead }: Refuting, cause: Term): Statement {
  const reading: Term = { is: 'reading', told };
  if (instead === NOT_REACHED) return { code: 'quiz.cause.not-so-far', with: { reading, cause } };
  const other = { ...told, value: instead, word: instead };
  return {
    code: 'quiz.cause.refuted',
    with: { reading, cause, instead: { is: 'said', told: other } },
  };
}
