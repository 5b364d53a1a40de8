/** What goes up the flue, from its temperature and oxygen. */
import type { RandomState } from '../../../numeric/index.ts';
import type { QuizPlant } from '../../item/maker.ts';
import { combustionReading } from './combustion-reading.ts';
import { pick } from './seeded-run.ts';
import { amount, rounded, type Sum, type Values } from './sum.ts';

/**
 * Siegert's constants for natural gas with the oxygen measured, as the German order on small furnaces
 * prints them (1. BImSchV, annex); per cent of the net heat.
 */
const A = 0.66;
const B = 0.009;
/** The oxygen of air in that formula, per cent. */
const AIR_OXYGEN = 21;
const FORMS = ['loss', 'efficiency'] as const;

/**
 * Equation: q = (T_flue − T_air) · (A / (21 − O₂) + B), per cent of the net heat of the fuel; what is left
 *   of a hundred is the efficiency by flue loss alone.
 * Valid for: natural gas, no condensation.
 * Left out: CO, radiation from the casing.
 */
export function flueLossSum(plant: QuizPlant, chance: RandomState): Sum | null {
  const form = pick(chance, FORMS);
  const reading = combustionReading(plant, chance);
  if (reading === null) return null;
  const percent = (value: Values) => 100 * value('oxygen');
  const warmer = (value: Values) => value('flue') - value('air');
  const perKelvin = (value: Values) => A / (AIR_OXYGEN - percent(value)) + B;
  const loss = (value: Values) => (warmer(value) * perKelvin(value)) / 100;
  const asked = (share: number) => (form === 'loss' ? share : 1 - share);
  return {
    topic: form === 'loss' ? 'calculation/flue loss' : 'calculation/efficiency',
    skills: ['combustion'],
    difficulty: form === 'loss' ? 0.5 : 0.6,
    run: reading.run,
    caution: { code: 'quiz.sum.caution.flue' },
    givens: {
      oxygen: { value: reading.oxygen, of: 'gas share' },
      flue: { value: reading.flueK, of: 'temperature' },
      air: { value: reading.airK, of: 'temperature' },
    },
    tells: (of) => [
      { code: 'quiz.sum.air.fire', with: { rate: amount(reading.rate, 'share') } },
      {
        code: 'quiz.sum.flue.read',
        with: { oxygen: of('oxygen'), flue: of('flue'), air: of('air') },
      },
      { code: 'quiz.sum.flue.formula', with: { a: A, b: B, full: AIR_OXYGEN } },
      { code: 'quiz.sum.flue.kelvin' },
    ],
    asks: { code: `quiz.sum.flue.asks.${form}` },
    reckon: (value) => asked(loss(value)),
    of: 'gas share',
    tolerance: form === 'loss' ? 0.04 : 0.004,
    working: (of, value, key) => [
      {
        code: 'quiz.sum.flue.work.warmer',
        with: { flue: of('flue'), air: of('air'), kelvin: rounded(warmer(value), 0) },
      },
      {
        code: 'quiz.sum.flue.work.factor',
        with: {
          a: A,
          b: B,
          left: rounded(AIR_OXYGEN - percent(value), 1),
          factor: rounded(perKelvin(value), 4),
        },
      },
      {
        code: 'quiz.sum.flue.work.loss',
        with: {
          kelvin: rounded(warmer(value), 0),
          factor: rounded(perKelvin(value), 4),
          loss: amount(loss(value), 'gas share'),
        },
      },
      ...(form === 'efficiency'
        ? [{ code: 'quiz.sum.flue.work.left', with: { efficiency: amount(key, 'gas share') } }]
        : []),
    ],
    slips: (value) => [
      {
        value: asked((loss(value) * (value('flue') - ZERO_K)) / warmer(value)),
        why: { code: 'quiz.sum.flue.slip.no-air' },
      },
      {
        value: asked((warmer(value) * (perKelvin(value) - B)) / 100),
        why: { code: 'quiz.sum.flue.slip.no-second' },
      },
      {
        value: asked((warmer(value) * (A / AIR_OXYGEN + B)) / 100),
        why: { code: 'quiz.sum.flue.slip.no-oxygen' },
      },
      {
        value: 1 - asked(loss(value)),
        why: { code: `quiz.sum.flue.slip.not-${form}` },
      },
    ],
  };
}
const ZERO_K = 273.15;
