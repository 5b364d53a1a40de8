import type { Skill } from '../../../../../machines/index.ts';
import type { faultsFor } from '../../../../engine/index.ts';

type Family = ReturnType<typeof faultsFor>[number]['family'];

const BY_FAMILY: Readonly<Partial<Record<Family, readonly Skill[]>>> = {
  'fuel train': ['fuel'],
  'air path': ['air'],
  ignition: ['ignition'],
  'flame sensing': ['sensing'],
  'burner and combustion': ['combustion'],
  'vessel and limits': ['limits'],
  'supply and wiring': ['wiring'],
};

/** What a fault of this family trains beside conduct. */
export function skillsOf(family: Family): readonly Skill[] {
  return BY_FAMILY[family] ?? [];
}
