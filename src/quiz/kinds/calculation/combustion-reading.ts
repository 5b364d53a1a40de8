/** What an analyser shows at a steady fire that the seed sets, in a plant that it may have upset. */
import type { RandomState } from '../../../numeric/index.ts';
import type { ItemRun } from '../../item/item.ts';
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

export interface CombustionReading {
  readonly run: ItemRun;
  /** Share of full fire that was set. */
  readonly rate: number;
  /** Share, in dry flue gas. */
  readonly oxygen: number;
  readonly flueK: number;
  /** Of the air that is burnt with, K. */
  readonly airK: number;
}

/** What moves the mixture and leaves the flame burning. */
const UPSETTING: Readonly<Record<string, readonly [low: number, high: number]>> = {
  'inlet screen blocked': [0.1, 0.6],
  'flue blocked': [0.1, 0.5],
  'passes sooted up': [0.05, 0.3],
  'belt slipping': [0.02, 0.08],
  'regulator spring weak': [0.05, 0.25],
  'gas nozzle part blocked': [0.05, 0.3],
  'gas leaner than at commissioning': [0.02, 0.08],
};
/** In hand, until the rate is reached and flue and cells have followed, s. */
const STEADY_S = 125;
const SOUND_SHARE = 0.3;
const ZERO_C = 273.15;
/** Where the sums of the trade hold well, and there is something to reckon. */
const LEAST_OXYGEN = 0.015;
const MOST_OXYGEN = 0.12;

/** Null where the fire did not last or is too far off for a sum. */
export function combustionReading(plant: QuizPlant, chance: RandomState): CombustionReading | null {
  const { serviceS } = plant.plan;
  const rates = plant.plan.setup.plant.control.curve.rates;
  const lowest = rates[0] ?? 0.3;
  const rate = Math.round(20 * between(chance, lowest + 0.05, 0.95)) / 20;
  const tolerances = pickTolerances(chance);
  const planned: Planned = {
    faults: upset(plant, chance),
    actions: [{ t: serviceS + 5, type: 'firing', mode: 'hand', rate }],
  };
  const run = startRun(plant, tolerances, planned);
  run.advanceTo(serviceS + STEADY_S);
  if (run.status().step !== 'modulation') return null;
  const atS = run.timeS() - 1;
  const oxygen = recorded(run, 'analyser.oxygen', atS) ?? 1;
  const flueK = recorded(run, 'analyser.temperature', atS) ?? 0;
  if (oxygen < LEAST_OXYGEN || oxygen > MOST_OXYGEN) return null;
  const airK = run.setup.plant.ambient.temperatureC + ZERO_C;
  return { run: itemRun(plant, tolerances, planned, run), rate, oxygen, flueK, airK };
}

function upset(plant: QuizPlant, chance: RandomState): Planned['faults'] {
  const faults = faultsThere(plant, Object.keys(UPSETTING));
  if (faults.length === 0 || between(chance, 0, 1) < SOUND_SHARE) return [];
  const fault = pick(chance, faults);
  const [low, high] = UPSETTING[fault] as readonly [number, number];
  return [standing(fault, Math.round(1000 * between(chance, low, high)) / 1000)];
}
