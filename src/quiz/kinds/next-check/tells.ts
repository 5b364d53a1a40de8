import type { SeededPlant } from '../../evidence/seeded-plant.ts';
import type { QuizPlant } from '../../item/maker.ts';
import type { Statement, Term } from '../../item/statement.ts';

/** So many causes are named in the stem; where more are left, thinking of them is part of the question. */
export const LISTED = 4;

/** How a start ended, at which plant, and what that and the readings leave. */
export function arrivalTells(
  plant: QuizPlant,
  seeded: SeededPlant,
  chart: boolean,
  standing: readonly number[],
): readonly Statement[] {
  const left: readonly Statement[] =
    standing.length > LISTED
      ? []
      : [
          {
            code: 'quiz.next.left',
            with: {
              causes: causesTerm(
                plant,
                [...standing].sort((a, b) => a - b),
              ),
            },
          },
        ];
  return [startTells(plant, seeded, chart), ...left];
}

export function startTells(plant: QuizPlant, seeded: SeededPlant, chart: boolean): Statement {
  const { lockout, endsIn } = seeded;
  const title = plant.plan.setup.plant.title;
  if (lockout === null) {
    return {
      code: 'quiz.reading.ended',
      with: { plant: title, step: { is: 'step', step: endsIn } },
    };
  }
  return {
    code: chart ? 'quiz.reading.locked-out' : 'quiz.reading.locked-out-unseen',
    with: {
      plant: title,
      step: { is: 'step', step: lockout.step },
      cause: { is: 'word', of: 'cause', word: lockout.cause },
    },
  };
}

export function causesTerm({ atlas }: QuizPlant, causes: readonly number[]): Term {
  return {
    is: 'list',
    of: causes.map((cause) => ({ is: 'cause', fault: atlas.causes[cause]?.fault ?? null })),
  };
}
