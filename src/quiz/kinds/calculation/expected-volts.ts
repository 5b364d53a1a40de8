/** What a meter shows on a ladder: behind contacts, across one, at a terminal whose wire is out. */
import type { Run } from '../../../engine/index.ts';
import type { RandomState } from '../../../numeric/index.ts';
import type { QuizPlant } from '../../item/maker.ts';
import { pickTolerances } from '../../item/other-plant.ts';
import type { Statement } from '../../item/statement.ts';
import { deviceTerm } from './device-words.ts';
import {
  between,
  faultsThere,
  itemRun,
  type Planned,
  pick,
  standing,
  startRun,
} from './seeded-run.ts';
import { amount, type Sum } from './sum.ts';
import { FORMS, type Form, placesOf, WIRES_OUT } from './volts-places.ts';
import type { Way, WayPart } from './wiring-way.ts';

const FUSE_BLOWN = 'control fuse blown';
/** Half of the runs with contacts have something wrong, so that a start stops short. */
const FAULT_SHARE = 0.4;
const FIRST_S = 30;
/** How far the meter may be from what the way says, as a share of the supply. */
const AS_SAID = 0.02;
const TOLERANCE = 0.05;
const STILL_S = 1;

/** The key is the supply or nothing, as the way of made contacts has it; the network must agree. */
export function expectedVoltsSum(plant: QuizPlant, chance: RandomState): Sum | null {
  const form = pick(chance, FORMS);
  const tolerances = pickTolerances(chance);
  const planned: Planned = { faults: faultFor(plant, form, chance), actions: [] };
  const run = startRun(plant, tolerances, planned);
  run.advanceTo(Math.round(between(chance, FIRST_S, plant.plan.serviceS + 20)));
  const places = placesOf(run, form, planned.faults);
  if (places.length === 0) return null;
  const place = pick(chance, places);
  const { way } = place;
  const supply = voltsBetween(run, way.from, way.neutral);
  const shown = voltsBetween(run, place.from, place.to);
  if (supply === null || shown === null) return null;
  const said = place.volts ? supply : 0;
  if (supply < STILL_S || Math.abs(shown - said) > AS_SAID * supply) return null;
  const { step } = run.status();
  return {
    topic: form === 'wire out' ? 'calculation/wire out' : `calculation/volts ${form}`,
    skills: ['wiring'],
    difficulty: difficultyOf(form, way),
    run: itemRun(plant, tolerances, planned, run),
    caution: { code: 'quiz.sum.caution.volts' },
    givens: { supply: { value: supply, of: 'voltage' } },
    tells: (of) => [
      { code: 'quiz.sum.volts.step', with: { step: { is: 'step', step } } },
      {
        code: 'quiz.sum.volts.fed',
        with: { wire: way.from, neutral: way.neutral, volts: of('supply') },
      },
      {
        code: way.parts.length === 1 ? 'quiz.sum.volts.way-of-one' : 'quiz.sum.volts.way',
        with: {
          from: way.from,
          to: way.to,
          parts: {
            is: 'list',
            of: way.parts.map((part) => ({ is: 'statement', statement: stateOf(part) })),
          },
        },
      },
      ...place.told,
    ],
    asks: place.asks,
    reckon: (value) => (place.volts ? value('supply') : 0),
    of: 'voltage',
    tolerance: TOLERANCE,
    toleranceAbs: TOLERANCE * supply,
    working: (_of, _value, key) => [
      place.because,
      { code: 'quiz.sum.volts.work.so', with: { volts: amount(key, 'voltage') } },
    ],
    slips: (value) => [
      {
        value: place.volts ? 0 : value('supply'),
        why: place.because,
      },
      ...(place.volts
        ? [{ value: 2 * value('supply'), why: { code: 'quiz.sum.volts.slip.twice' } }]
        : []),
    ],
  };
}

function faultFor(plant: QuizPlant, form: Form, chance: RandomState): Planned['faults'] {
  const out = faultsThere(plant, Object.keys(WIRES_OUT));
  if (form === 'wire out') return out.length === 0 ? [] : [standing(pick(chance, out), 1)];
  const fuse = faultsThere(plant, [FUSE_BLOWN]);
  const some = [...fuse, ...faultsThere(plant, STOPPING)];
  return some.length > 0 && between(chance, 0, 1) < FAULT_SHARE
    ? [standing(pick(chance, some), 1)]
    : [];
}
/** Severity one: broken, welded, open. */
const STOPPING = [
  'high limit tripped',
  'fan contactor coil open',
  'pilot valve coil open',
  'upstream valve coil open',
  'low-gas switch contact open',
  'safety relay feedback lost',
  'ignition relay not closing',
];

function stateOf({ element: { name, kind }, made }: WayPart): Statement {
  const device = deviceTerm(name);
  if (kind === 'fuse') {
    return {
      code: made ? 'quiz.sum.volts.part.whole' : 'quiz.sum.volts.part.blown',
      with: { device },
    };
  }
  const what = kind === 'output' ? 'output' : 'contact';
  return { code: `quiz.sum.volts.part.${what}-${made ? 'made' : 'open'}`, with: { device } };
}

function voltsBetween(run: Run, from: string, to: string): number | null {
  return run.meter({ kind: 'volts', from, to })?.value ?? null;
}

/** More in the way is more to go through; what is against intuition counts for more. */
function difficultyOf(form: Form, { parts }: Way): number {
  const base: Record<Form, number> = {
    'behind made': -1.2,
    'behind open': -0.8,
    'across open': 0.6,
    'across made': 0,
    'wire out': 0.4,
  };
  return base[form] + 0.2 * Math.min(4, parts.length - 1);
}
