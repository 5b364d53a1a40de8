/** Why a cause is it, or is not: by the readings. */
import { NOT_REACHED, type Observation } from '../../../diagnosis/index.ts';
import { quizTablesOf } from '../../evidence/quiz-tables.ts';
import { binShares, type Refuting } from '../../evidence/refuting.ts';
import type { SeededPlant } from '../../evidence/seeded-plant.ts';
import { toldOf } from '../../evidence/told.ts';
import type { QuizPlant } from '../../item/maker.ts';
import type { Statement, Term } from '../../item/statement.ts';

/** So many sound plants have to read one and the same before it can be said what a sound one reads. */
const AS_A_RULE = 0.8;
/** Says by itself that it is as on a sound plant; what differs from it says so too. */
const IN_BAND = 'in band';

/** A sentence for each reading: whether the cause shows there, and what a sound plant would read. */
export function whyItIs(
  plant: QuizPlant,
  seeded: SeededPlant,
  readings: readonly Observation[],
): readonly Statement[] {
  return readings.flatMap(({ key }) =>
    toldOf(plant, seeded, [key]).map((told): Statement => {
      const reading: Term = { is: 'reading', told };
      const sound = soundWord(plant, key);
      if (told.word === IN_BAND || told.word === sound) {
        return { code: 'quiz.cause.fits-as-sound', with: { reading } };
      }
      if (sound === null) return { code: 'quiz.cause.fits', with: { reading } };
      if (sound === IN_BAND) return { code: 'quiz.cause.fits-strange', with: { reading } };
      const other = { ...told, value: sound, word: sound };
      return {
        code: 'quiz.cause.fits-unlike-sound',
        with: { reading, sound: { is: 'said', told: other } },
      };
    }),
  );
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

/** What nearly all sound plants read there; null where they differ, or never come to it. */
function soundWord(plant: QuizPlant, key: number): string | null {
  const { causes, keys } = plant.atlas;
  const sound = causes.findIndex(({ fault }) => fault === null);
  if (sound < 0) return null;
  const shares = binShares(plant, quizTablesOf(plant).prior, key, sound);
  const most = shares.findIndex((share) => share >= AS_A_RULE);
  const word = keys[key]?.bins[most] ?? NOT_REACHED;
  return word === NOT_REACHED ? null : word;
}
