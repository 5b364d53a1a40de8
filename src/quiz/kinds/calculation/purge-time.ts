/** How long a purge must last, or how often it changes the air, from the volume and the airflow. */
import type { RandomState } from '../../../numeric/index.ts';
import type { QuizPlant } from '../../item/maker.ts';
import { pickTolerances } from '../../item/other-plant.ts';
import {
  between,
  faultsThere,
  itemRun,
  type Planned,
  pick,
  recorded,
  standing,
  startRun,
} from './seeded-run.ts';
import { amount, rounded, type Sum, type Values } from './sum.ts';

const FORMS = ['time by flow', 'time by differential', 'changes by flow'] as const;

/** What takes some of the air and lets the purge be proved all the same. */
const TAKING_AIR: Readonly<Record<string, readonly [low: number, high: number]>> = {
  'inlet screen blocked': [0.2, 0.75],
  'flue blocked': [0.2, 0.6],
  'passes sooted up': [0.1, 0.4],
  'room starved of air': [0.3, 0.8],
  'belt slipping': [0.03, 0.12],
};
const SOUND_SHARE = 0.25;
const GAS_CONSTANT_AIR = 287.05;
const ATMOSPHERE_PA = 101325;
const ZERO_C = 273.15;
/** From the beginning of the purge until the air runs evenly, s. */
const SETTLES_S = 4;
const MOST_S = 220;
const STRIDE_S = 5;

/**
 * Equation: t = n · V / q; by the differential q = q_ref · √(Δp / Δp_ref).
 * Left out: mixing, which is why several changes are asked for.
 * Source: any book on furnace purging; the counter of the plant counts so.
 */
export function purgeTimeSum(plant: QuizPlant, chance: RandomState): Sum | null {
  const { plant: file, profile } = plant.plan.setup;
  const counter = file.field.airChangeCounters[0];
  if (counter === undefined) return null;
  const form = pick(chance, FORMS);
  const tolerances = pickTolerances(chance);
  const planned = plannedFor(plant, chance);
  const run = startRun(plant, tolerances, planned);
  const beganS = advanceToPurge(run);
  if (beganS === null) return null;
  const atS = Math.ceil(beganS + SETTLES_S);
  run.advanceTo(atS + 1);
  const flowKgS = recorded(run, 'air.flow', atS) ?? 0;
  const headPa = recorded(run, 'air.head.differential', atS) ?? 0;
  const intakeK = run.setup.plant.ambient.temperatureC + ZERO_C;
  const flowM3S = (flowKgS * GAS_CONSTANT_AIR * intakeK) / ATMOSPHERE_PA;
  if (!(flowM3S > 0) || !(headPa > 0)) return null;
  const { furnaceVolumeM3, passVolumeM3 } = file.furnace;
  const changes = counter.changesRequired;
  const purgeS = profile.timings.purgeS;
  const byDifferential = form === 'time by differential';
  const countsChanges = form === 'changes by flow';
  const flowOf = (value: Values) =>
    byDifferential
      ? value('sheetFlow') * Math.sqrt(value('head') / value('sheetHead'))
      : value('flow');
  const volume = (value: Values) => value('furnace') + value('passes');
  return {
    topic: countsChanges ? 'calculation/air changes' : 'calculation/purge time',
    skills: ['air'],
    difficulty: byDifferential ? 0.7 : countsChanges ? -0.4 : -0.2,
    run: itemRun(plant, tolerances, planned, run),
    caution: { code: 'quiz.sum.caution.purge' },
    givens: {
      furnace: { value: furnaceVolumeM3, of: 'volume' },
      passes: { value: passVolumeM3, of: 'volume' },
      ...(byDifferential
        ? {
            sheetFlow: { value: counter.referenceFlowM3S, of: 'volume flow' },
            sheetHead: { value: counter.referencePa, of: 'air pressure' },
            head: { value: headPa, of: 'air pressure' },
          }
        : { flow: { value: flowM3S, of: 'volume flow' } }),
      ...(countsChanges ? { purge: { value: purgeS, of: 'time' } } : {}),
    },
    tells: (of) => [
      {
        code: 'quiz.sum.purge.volumes',
        with: { furnace: of('furnace'), passes: of('passes') },
      },
      byDifferential
        ? {
            code: 'quiz.sum.purge.differential',
            with: { flow: of('sheetFlow'), sheet: of('sheetHead'), head: of('head') },
          }
        : { code: 'quiz.sum.purge.flow', with: { flow: of('flow') } },
      countsChanges
        ? { code: 'quiz.sum.purge.lasts', with: { time: of('purge') } }
        : { code: 'quiz.sum.purge.wanted', with: { changes } },
    ],
    asks: { code: countsChanges ? 'quiz.sum.purge.asks.changes' : 'quiz.sum.purge.asks.time' },
    reckon: (value) =>
      countsChanges
        ? (value('purge') * flowOf(value)) / volume(value)
        : (changes * volume(value)) / flowOf(value),
    of: countsChanges ? 'number' : 'time',
    tolerance: 0.04,
    working: (of, value, key) => [
      {
        code: 'quiz.sum.purge.work.volume',
        with: {
          furnace: of('furnace'),
          passes: of('passes'),
          volume: amount(volume(value), 'volume'),
        },
      },
      ...(byDifferential
        ? [
            {
              code: 'quiz.sum.purge.work.root',
              with: {
                head: of('head'),
                sheet: of('sheetHead'),
                share: rounded(Math.sqrt(value('head') / value('sheetHead')), 3),
                flow: amount(flowOf(value), 'volume flow'),
              },
            },
          ]
        : []),
      {
        code: 'quiz.sum.purge.work.one',
        with: {
          volume: amount(volume(value), 'volume'),
          flow: amount(flowOf(value), 'volume flow'),
          one: amount(volume(value) / flowOf(value), 'time'),
        },
      },
      countsChanges
        ? {
            code: 'quiz.sum.purge.work.changes',
            with: { time: of('purge'), changes: rounded(key, 1) },
          }
        : { code: 'quiz.sum.purge.work.time', with: { changes, time: amount(key, 'time') } },
    ],
    slips: (value, key) => {
      const alone = value('furnace') / volume(value);
      const ratio = byDifferential ? value('head') / value('sheetHead') : 1;
      return [
        {
          value: countsChanges ? key / alone : key * alone,
          why: { code: 'quiz.sum.purge.slip.furnace-alone' },
        },
        ...(byDifferential
          ? [
              { value: key / Math.sqrt(ratio), why: { code: 'quiz.sum.purge.slip.no-root' } },
              { value: key * Math.sqrt(ratio), why: { code: 'quiz.sum.purge.slip.sheet-flow' } },
            ]
          : []),
        countsChanges
          ? { value: key / 60, why: { code: 'quiz.sum.purge.slip.minutes' } }
          : { value: key / changes, why: { code: 'quiz.sum.purge.slip.one-change' } },
      ];
    },
  };
}

function plannedFor(plant: QuizPlant, chance: RandomState): Planned {
  const faults = faultsThere(plant, Object.keys(TAKING_AIR));
  if (faults.length === 0 || between(chance, 0, 1) < SOUND_SHARE)
    return { faults: [], actions: [] };
  const fault = pick(chance, faults);
  const [low, high] = TAKING_AIR[fault] as readonly [number, number];
  const severity = Math.round(100 * between(chance, low, high)) / 100;
  return { faults: [standing(fault, severity)], actions: [] };
}

/** When the purge began; null where it was not reached. */
function advanceToPurge(run: ReturnType<typeof startRun>): number | null {
  while (run.timeS() < MOST_S) {
    run.advanceTo(run.timeS() + STRIDE_S);
    const { step, sinceS, lockout } = run.status();
    if (lockout !== null) return null;
    if (step === 'purge') return sinceS;
  }
  return null;
}
