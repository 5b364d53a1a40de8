/** What the wiper of a servo's feedback track gives at an angle. */
import type { RandomState } from '../../../numeric/index.ts';
import type { QuizPlant } from '../../item/maker.ts';
import { pickTolerances } from '../../item/other-plant.ts';
import { deviceNamed } from './device-words.ts';
import { between, itemRun, pick, recorded, startRun } from './seeded-run.ts';
import { amount, rounded, type Sum, type Values } from './sum.ts';

const FORMS = ['volts', 'angle'] as const;
/** End resistors keep the wiper off zero: this share of the track's volts at 0°, all of them at 90°. */
const ZERO_SHARE = 0.2;
const FULL_DEG = 90;
const LEAST_DEG = 4;
const MOST_DEG = 88;
const FIRST_S = 70;
const AS_SAID = 0.02;
const NOTHING_PLANNED = { faults: [], actions: [] };

/** Equation: U = U_0 + (U_90 − U_0) · α / 90°, a straight track. */
export function feedbackVoltsSum(plant: QuizPlant, chance: RandomState): Sum | null {
  const form = pick(chance, FORMS);
  const tolerances = pickTolerances(chance);
  const run = startRun(plant, tolerances, NOTHING_PLANNED);
  run.advanceTo(Math.round(between(chance, FIRST_S, plant.plan.serviceS + 30)));
  const { servos } = run.setup.plant.field;
  if (servos.length === 0) return null;
  const servo = pick(chance, servos);
  const channel = servo.moves === 'fuel valve' ? 'fuel-valve.feedback' : 'damper.feedback';
  const deg = recorded(run, channel, run.timeS());
  const input = `ai.${servo.id}`;
  const read = run.meter({ kind: 'volts', from: `${input}:1`, to: `${input}:2` });
  const track = run.meter({
    kind: 'volts',
    from: `${servo.id}.upper:1`,
    to: `${servo.id}.lower:2`,
  });
  if (deg === undefined || read === null || track === null) return null;
  if (deg < LEAST_DEG || deg > MOST_DEG) return null;
  const full = track.value;
  const zero = ZERO_SHARE * full;
  const said = zero + ((full - zero) * deg) / FULL_DEG;
  if (Math.abs(said - read.value) > AS_SAID * full) return null;
  const share = (value: Values) =>
    form === 'volts'
      ? value('angle') / FULL_DEG
      : (value('volts') - value('zero')) / (value('full') - value('zero'));
  const device = deviceNamed(`${servo.id}.servo`);
  return {
    topic: form === 'volts' ? 'calculation/feedback volts' : 'calculation/feedback angle',
    skills: ['wiring'],
    difficulty: form === 'volts' ? -0.1 : 0.1,
    run: itemRun(plant, tolerances, NOTHING_PLANNED, run),
    caution: { code: 'quiz.sum.caution.volts' },
    givens: {
      zero: { value: zero, of: 'voltage' },
      full: { value: full, of: 'voltage' },
      ...(form === 'volts'
        ? { angle: { value: deg, of: 'angle' } }
        : { volts: { value: read.value, of: 'voltage' } }),
    },
    tells: (of) => [
      { code: 'quiz.sum.track.ends', with: { device, zero: of('zero'), full: of('full') } },
      form === 'volts'
        ? { code: 'quiz.sum.track.stands', with: { angle: of('angle') } }
        : { code: 'quiz.sum.track.measured', with: { volts: of('volts') } },
    ],
    asks: { code: `quiz.sum.track.asks.${form}`, with: { device } },
    reckon: (value) =>
      form === 'volts'
        ? value('zero') + (value('full') - value('zero')) * share(value)
        : FULL_DEG * share(value),
    of: form === 'volts' ? 'voltage' : 'angle',
    tolerance: 0.05,
    ...(form === 'volts' ? { toleranceAbs: 0.1 } : { toleranceAbs: 2 }),
    working: (of, value, key) => [
      form === 'volts'
        ? {
            code: 'quiz.sum.track.work.share-of-angle',
            with: { angle: of('angle'), share: rounded(share(value), 3) },
          }
        : {
            code: 'quiz.sum.track.work.share-of-volts',
            with: {
              volts: of('volts'),
              zero: of('zero'),
              span: amount(value('full') - value('zero'), 'voltage'),
              share: rounded(share(value), 3),
            },
          },
      form === 'volts'
        ? {
            code: 'quiz.sum.track.work.volts',
            with: {
              zero: of('zero'),
              span: amount(value('full') - value('zero'), 'voltage'),
              share: rounded(share(value), 3),
              volts: amount(key, 'voltage'),
            },
          }
        : { code: 'quiz.sum.track.work.angle', with: { angle: amount(key, 'angle') } },
    ],
    slips: (value) => [
      {
        value:
          form === 'volts'
            ? value('full') * share(value)
            : (FULL_DEG * value('volts')) / value('full'),
        why: { code: 'quiz.sum.track.slip.no-zero' },
      },
    ],
  };
}
