/** What a 4–20 mA loop carries, and what stands across the input that it ends in. */
import type { PlantFile } from '../../../engine/index.ts';
import type { RandomState } from '../../../numeric/index.ts';
import type { QuantityKind } from '../../../quantity/index.ts';
import type { QuizPlant } from '../../item/maker.ts';
import { pickTolerances } from '../../item/other-plant.ts';
import { deviceNamed } from './device-words.ts';
import { between, itemRun, pick, startRun } from './seeded-run.ts';
import { amount, rounded, type Sum, type Values } from './sum.ts';

interface Loop {
  readonly id: string;
  readonly of: QuantityKind;
  /** At 4 and at 20 mA, SI. */
  readonly low: number;
  readonly high: number;
}

const FORMS = ['current', 'volts', 'value'] as const;
const LIVE_ZERO_A = 0.004;
const SPAN_A = 0.016;
const FULL_A = 0.02;
/** Between these shares of the range there is something to reckon. */
const LEAST_SHARE = 0.03;
const MOST_SHARE = 0.98;
const FIRST_S = 20;
const ZERO_C = 273.15;
const SUPPLY_VOLTS = 20;
const NOTHING_PLANNED = { faults: [], actions: [] };

/**
 * Equation: I = 4 mA + 16 mA · (x − x_low) / (x_high − x_low); U = R · I.
 * Source: IEC 60381-1.
 */
export function loopSignalSum(plant: QuizPlant, chance: RandomState): Sum | null {
  const form = pick(chance, FORMS);
  const tolerances = pickTolerances(chance);
  const run = startRun(plant, tolerances, NOTHING_PLANNED);
  run.advanceTo(Math.round(between(chance, FIRST_S, plant.plan.serviceS + 30)));
  const loop = pick(chance, loopsOf(run.setup.plant));
  const amps = run.meter({ kind: 'amps', from: `ai.${loop.id}:1`, to: '' })?.direct ?? 0;
  const volts = run.meter({ kind: 'volts', from: `ai.${loop.id}:1`, to: `ai.${loop.id}:2` });
  if (volts === null || !(amps > 0) || volts.value > SUPPLY_VOLTS) return null;
  const ohm = Math.round(volts.value / amps);
  const share = (amps - LIVE_ZERO_A) / SPAN_A;
  if (share < LEAST_SHARE || share > MOST_SHARE) return null;
  const span = loop.high - loop.low;
  const part = (value: Values) => (value('shown') - value('low')) / (value('high') - value('low'));
  const current = (value: Values) =>
    form === 'value' ? value('volts') / value('ohm') : LIVE_ZERO_A + SPAN_A * part(value);
  const reckon = (value: Values): number => {
    if (form === 'current') return current(value);
    if (form === 'volts') return value('ohm') * current(value);
    return (
      value('low') + ((current(value) - LIVE_ZERO_A) / SPAN_A) * (value('high') - value('low'))
    );
  };
  const truth = { current: amps, volts: volts.value, value: loop.low + share * span };
  const of: Record<(typeof FORMS)[number], QuantityKind> = {
    current: 'loop current',
    volts: 'voltage',
    value: loop.of,
  };
  const device = deviceNamed(`${loop.id}.loop`);
  return {
    topic: form === 'value' ? 'calculation/loop reading' : `calculation/loop ${form}`,
    skills: ['wiring'],
    difficulty: { current: -0.2, volts: 0.1, value: 0.3 }[form],
    run: itemRun(plant, tolerances, NOTHING_PLANNED, run),
    caution: { code: 'quiz.sum.caution.volts' },
    givens: {
      low: { value: loop.low, of: loop.of },
      high: { value: loop.high, of: loop.of },
      ...(form === 'value'
        ? { volts: { value: volts.value, of: 'voltage' } }
        : { shown: { value: truth.value, of: loop.of } }),
      ...(form === 'current' ? {} : { ohm: { value: ohm, of: 'resistance' } }),
    },
    tells: (given) => [
      {
        code: 'quiz.sum.loop.range',
        with: { device, low: given('low'), high: given('high') },
      },
      ...(form === 'current' ? [] : [{ code: 'quiz.sum.loop.input', with: { ohm: given('ohm') } }]),
      form === 'value'
        ? { code: 'quiz.sum.loop.measured', with: { volts: given('volts') } }
        : { code: 'quiz.sum.loop.stands', with: { shown: given('shown') } },
    ],
    asks: { code: `quiz.sum.loop.asks.${form}`, with: { device } },
    reckon,
    of: of[form],
    tolerance: 0.03,
    ...(form === 'value' ? { toleranceAbs: 0.025 * span } : {}),
    working: (given, value, key) =>
      form === 'value'
        ? [
            {
              code: 'quiz.sum.loop.work.from-volts',
              with: {
                volts: given('volts'),
                ohm: given('ohm'),
                current: amount(current(value), 'loop current'),
              },
            },
            {
              code: 'quiz.sum.loop.work.above-zero',
              with: {
                above: amount(current(value) - LIVE_ZERO_A, 'loop current'),
                share: rounded((current(value) - LIVE_ZERO_A) / SPAN_A, 3),
              },
            },
            { code: 'quiz.sum.loop.work.value', with: { value: amount(key, loop.of) } },
          ]
        : [
            {
              code: 'quiz.sum.loop.work.share',
              with: { shown: given('shown'), share: rounded(part(value), 3) },
            },
            {
              code: 'quiz.sum.loop.work.current',
              with: {
                share: rounded(part(value), 3),
                current: amount(current(value), 'loop current'),
              },
            },
            ...(form === 'volts'
              ? [
                  {
                    code: 'quiz.sum.loop.work.volts',
                    with: {
                      ohm: given('ohm'),
                      current: amount(current(value), 'loop current'),
                      volts: amount(key, 'voltage'),
                    },
                  },
                ]
              : []),
          ],
    slips: (value) => {
      const scale = form === 'volts' ? value('ohm') : 1;
      if (form === 'value') {
        const width = value('high') - value('low');
        return [
          {
            value: value('low') + (current(value) / FULL_A) * width,
            why: { code: 'quiz.sum.loop.slip.no-zero' },
          },
          {
            value: value('low') + ((current(value) - LIVE_ZERO_A) / FULL_A) * width,
            why: { code: 'quiz.sum.loop.slip.twenty' },
          },
        ];
      }
      return [
        { value: scale * FULL_A * part(value), why: { code: 'quiz.sum.loop.slip.no-zero' } },
        {
          value: scale * (LIVE_ZERO_A + FULL_A * part(value)),
          why: { code: 'quiz.sum.loop.slip.twenty' },
        },
        {
          value: scale * SPAN_A * part(value),
          why: { code: 'quiz.sum.loop.slip.no-zero-added' },
        },
      ];
    },
  };
}

/** Transmitters whose range the plant file gives in a quantity that has a name. */
function loopsOf({ field }: PlantFile): readonly Loop[] {
  return [
    ...field.transmitters.map(
      ({ id, senses, lowPa, highPa }): Loop => ({
        id,
        of: senses === 'vessel' ? 'vessel pressure' : 'gas pressure',
        low: lowPa,
        high: highPa,
      }),
    ),
    ...field.thermometers.map(
      ({ id, lowC, highC }): Loop => ({
        id,
        of: 'temperature',
        low: lowC + ZERO_C,
        high: highC + ZERO_C,
      }),
    ),
    ...field.levelProbes.map(
      ({ id, lowM, highM }): Loop => ({ id, of: 'level', low: lowM, high: highM }),
    ),
  ];
}
