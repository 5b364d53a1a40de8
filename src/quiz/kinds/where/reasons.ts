/** What a thing of the drawing is called, and why the cause does not lie there. */
import { NOT_REACHED } from '../../../diagnosis/index.ts';
import type { Refuting } from '../../evidence/refuting.ts';
import type { QuizPlant } from '../../item/maker.ts';
import type { Statement, Term } from '../../item/statement.ts';
import { hasOneServo } from './spot-of.ts';

export function spotWords({ sound: { plant } }: QuizPlant, spot: string): Statement {
  const alone = spot === 'damper' && hasOneServo(plant) ? '-alone' : '';
  return { code: `quiz.where.spot.${spot}${alone}` };
}

export function whyNotThere({ told, instead }: Refuting, place: Statement): Statement {
  const reading: Term = { is: 'reading', told };
  const spot: Term = { is: 'statement', statement: place };
  if (instead === NOT_REACHED) return { code: 'quiz.where.not-so-far', with: { reading, spot } };
  const other = { ...told, value: instead, word: instead };
  return {
    code: 'quiz.where.refuted',
    with: { reading, spot, instead: { is: 'said', told: other } },
  };
}
