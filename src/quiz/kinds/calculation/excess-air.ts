/** Excess air, or the ratio of air, from the oxygen in dry flue gas. */
import type { RandomState } from '../../../numeric/index.ts';
import type { QuizPlant } from '../../item/maker.ts';
import { combustionReading } from './combustion-reading.ts';
import { dryGasShare } from './fuel-gas.ts';
import { pick } from './seeded-run.ts';
import { amount, rounded, type Sum, type Values } from './sum.ts';

/** Oxygen of dry air, per cent, as an analyser is set to it. */
const AIR_OXYGEN = 20.9;
const FORMS = ['excess', 'ratio'] as const;

/**
 * Equation: λ − 1 = (V_dry / V_air) · O₂ / (20.9 − O₂), both volumes with just enough air.
 * Left out: CO and unburnt gas, which a fire in order has too little of to count.
 * Source: balance of oxygen over dry flue gas; the factor is often left out as near one.
 */
export function excessAirSum(plant: QuizPlant, chance: RandomState): Sum | null {
  const form = pick(chance, FORMS);
  const reading = combustionReading(plant, chance);
  if (reading === null) return null;
  const factor = rounded(dryGasShare(plant.plan.setup.plant), 2);
  const percent = (value: Values) => 100 * value('oxygen');
  const excessOf = (value: Values) => (factor * percent(value)) / (AIR_OXYGEN - percent(value));
  const asked = (excess: number) => (form === 'excess' ? excess : 1 + excess);
  return {
    topic: form === 'excess' ? 'calculation/excess air' : 'calculation/air ratio',
    skills: ['combustion'],
    difficulty: form === 'excess' ? 0.2 : 0.3,
    run: reading.run,
    caution: { code: 'quiz.sum.caution.flue' },
    givens: { oxygen: { value: reading.oxygen, of: 'gas share' } },
    tells: (of) => [
      { code: 'quiz.sum.air.fire', with: { rate: amount(reading.rate, 'share') } },
      { code: 'quiz.sum.air.oxygen', with: { oxygen: of('oxygen'), air: AIR_OXYGEN } },
      { code: 'quiz.sum.air.factor', with: { factor } },
    ],
    asks: { code: `quiz.sum.air.asks.${form}` },
    reckon: (value) => asked(excessOf(value)),
    of: form === 'excess' ? 'gas share' : 'number',
    tolerance: form === 'excess' ? 0.05 : 0.012,
    working: (of, value) => {
      const excess = excessOf(value);
      return [
        {
          code: 'quiz.sum.air.work.left',
          with: {
            oxygen: of('oxygen'),
            air: AIR_OXYGEN,
            left: rounded(AIR_OXYGEN - percent(value), 1),
            quotient: rounded(percent(value) / (AIR_OXYGEN - percent(value)), 3),
          },
        },
        {
          code: 'quiz.sum.air.work.factor',
          with: { factor, excess: amount(excess, 'gas share') },
        },
        ...(form === 'ratio'
          ? [{ code: 'quiz.sum.air.work.ratio', with: { ratio: rounded(1 + excess, 2) } }]
          : []),
      ];
    },
    slips: (value) => {
      const excess = excessOf(value);
      return [
        {
          value: asked((factor * percent(value)) / AIR_OXYGEN),
          why: { code: 'quiz.sum.air.slip.no-rest' },
        },
        { value: asked(excess / factor), why: { code: 'quiz.sum.air.slip.no-factor' } },
        form === 'excess'
          ? { value: 1 + excess, why: { code: 'quiz.sum.air.slip.ratio' } }
          : { value: excess, why: { code: 'quiz.sum.air.slip.excess' } },
      ];
    },
  };
}
