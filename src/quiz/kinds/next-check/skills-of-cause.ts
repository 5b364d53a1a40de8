import type { Skill } from '../../../../machines/job/index.ts';
import { faultsFor } from '../../../engine/index.ts';
import type { QuizPlant } from '../../item/maker.ts';

type Family = ReturnType<typeof faultsFor>[number]['family'];

const SKILLS: Readonly<Record<Family, readonly Skill[]>> = {
  'fuel train': ['fuel'],
  'air path': ['air'],
  ignition: ['ignition'],
  'flame sensing': ['sensing'],
  'burner and combustion': ['combustion'],
  'vessel and limits': ['limits'],
  'supply and wiring': ['wiring'],
  people: ['conduct'],
};

/** What finding a cause takes; nothing wrong takes knowing the sequence. */
export function skillsOfCause({ plan }: QuizPlant, fault: string | null): readonly Skill[] {
  const family = faultsFor(plan.setup.plant).find(({ id }) => id === fault)?.family;
  return family === undefined ? ['sequence'] : SKILLS[family];
}
