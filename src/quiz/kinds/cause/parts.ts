/** By which parts causes are told from one another, and what someone learns who finds them. */
import type { Skill } from '../../../../machines/job/index.ts';
import { faultsFor } from '../../../engine/index.ts';
import type { QuizPlant } from '../../item/maker.ts';

type Fault = ReturnType<typeof faultsFor>[number];

const FAMILY_SKILLS: Readonly<Record<Fault['family'], Skill | null>> = {
  'fuel train': 'fuel',
  'air path': 'air',
  ignition: 'ignition',
  'flame sensing': 'sensing',
  'burner and combustion': 'combustion',
  'vessel and limits': 'limits',
  'supply and wiring': 'wiring',
  people: null,
};

/** Parts at which only people go wrong. */
const SKILLS_OF_HANDS: Readonly<Record<string, Skill>> = {
  'manual gas cock': 'fuel',
  'firing-rate control': 'limits',
  'firing-rate selector': 'limits',
};

const kept = new WeakMap<QuizPlant, ReadonlyMap<string, Fault>>();

function faultIn(plant: QuizPlant, id: string): Fault | undefined {
  const known =
    kept.get(plant) ??
    new Map(faultsFor(plant.sound.plant).map((fault) => [fault.id, fault] as const));
  kept.set(plant, known);
  return known.get(id);
}

/** What it is a fault of. */
export function componentOf(plant: QuizPlant, id: string): string {
  return faultIn(plant, id)?.component ?? id;
}

/** The parts that it is mended at, that of the first remedy first. */
export function mendedAt(plant: QuizPlant, id: string): readonly string[] {
  const parts = faultIn(plant, id)?.remedies.map(({ part }) => part) ?? [];
  return [...new Set(parts)];
}

/** All parts by which a cause may be named: those it is mended at, and what it is a fault of. */
export function partsOf(plant: QuizPlant, id: string): readonly string[] {
  return [...new Set([...mendedAt(plant, id), componentOf(plant, id)])];
}

export function sharesPart(plant: QuizPlant, a: string, b: string): boolean {
  const others = new Set(partsOf(plant, b));
  return partsOf(plant, a).some((part) => others.has(part));
}

/** What people left wrong is learnt with the other causes at the same part. */
export function skillOf(plant: QuizPlant, id: string): Skill {
  const fault = faultIn(plant, id);
  if (fault === undefined) return 'sequence';
  const own = FAMILY_SKILLS[fault.family];
  if (own !== null) return own;
  const [part = ''] = mendedAt(plant, id);
  const byPart = SKILLS_OF_HANDS[part];
  if (byPart !== undefined) return byPart;
  const other = faultsFor(plant.sound.plant).find(
    ({ family, remedies }) =>
      FAMILY_SKILLS[family] !== null && remedies.some((one) => one.part === part),
  );
  return (other === undefined ? null : FAMILY_SKILLS[other.family]) ?? 'sequence';
}
