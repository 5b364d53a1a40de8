/** Why a thing can come only where it comes, as the sequence itself has it. */
import { describeStep, STEPS, type StepName } from '../../../../machines/burner/index.ts';
import type { QuizPlant } from '../../item/maker.ts';
import type { Statement } from '../../item/statement.ts';
import type { Thing } from './things.ts';

/** @param before the step that came before its own; null where none did */
export function reasonsFor(
  plant: QuizPlant,
  thing: Thing,
  before: StepName | null,
): readonly Statement[] {
  const { step, how, id } = thing;
  const own: Statement = { code: `quiz.order.why.${id}` };
  if (step === null) return [own];
  const purpose = purposeOf(plant, step);
  const belongs: Statement = { code: 'quiz.order.why.step', with: { step: { is: 'step', step } } };
  if (how === 'proved') return [own, belongs, ...purpose];
  if (step === 'lockout') return [own, ...purpose];
  const waited = before === null || !GOES_ON.has(before) ? [] : waitedFor(plant, before);
  return [...waited, belongs, ...purpose];
}

/** Steps that are not left because what they wait for has come. */
const STAYED_IN: readonly StepName[] = ['standby', 'modulation', 'lockout'];
const GOES_ON: ReadonlySet<StepName> = new Set(STEPS.filter((step) => !STAYED_IN.includes(step)));

function purposeOf(plant: QuizPlant, step: StepName): readonly Statement[] {
  const described = describeStep(step, plant.plan.setup.plant.variant);
  return described === undefined ? [] : [{ code: described.purpose }];
}

/** What the step before had to have before it could be left, and for how long it lasts. */
function waitedFor(plant: QuizPlant, step: StepName): readonly Statement[] {
  const described = describeStep(step, plant.plan.setup.plant.variant);
  if (described === undefined) return [];
  // A step is left from its last phase; what an earlier one held on to may be gone by then.
  const last = described.phases[described.phases.length - 1];
  const inputs = last?.waitsFor ?? [];
  const named = { is: 'step', step } as const;
  if (inputs.length === 0 || inputs.length > MOST_NAMED) {
    return last?.lasts == null ? [] : [{ code: 'quiz.order.why.time', with: { step: named } }];
  }
  return [
    {
      code: 'quiz.order.why.waits',
      with: {
        step: named,
        waits: {
          is: 'list',
          of: inputs.map(({ input, wanted }) => ({
            is: 'word',
            of: 'input',
            word: input,
            ...(wanted ? {} : { suffix: '.not' }),
          })),
        },
      },
    },
  ];
}
const MOST_NAMED = 5;
