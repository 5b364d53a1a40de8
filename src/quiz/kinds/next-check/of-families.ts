import { type Belief, priorBelief } from '../../../diagnosis/index.ts';
import { faultsFor } from '../../../engine/index.ts';
import type { QuizPlant } from '../../item/maker.ts';

/** As good as out of the question, as a logarithm. */
const FAR = 40;

/** What whoever knows only the kind of fault believes: all faults of the families of these causes. */
export function ofFamilies({ atlas, plan }: QuizPlant, causes: readonly number[]): Belief {
  const families = new Map(faultsFor(plan.setup.plant).map(({ id, family }) => [id, family]));
  const familyOf = (cause: number) => families.get(atlas.causes[cause]?.fault ?? '');
  const wanted = new Set(causes.map(familyOf));
  return priorBelief(atlas).map((log, p) =>
    wanted.has(familyOf(atlas.causeOf[p] as number)) ? log : log - FAR,
  );
}
