/** How much gas passes, from the pressure of a shut length of the train. */
import type { Run } from '../../../engine/index.ts';
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

/** A shut length, what lets gas through, and when it is watched. */
interface Scene {
  readonly tells: 'space-fills' | 'space-empties' | 'train-shut';
  readonly fault: string;
  /** Nodes that are shut in together; the pressure is read at the last. */
  readonly nodes: readonly string[];
  /** Gas let through in an hour at 100 mbar, in volumes of the length. */
  readonly passes: readonly [low: number, high: number];
  /** Held from when to when, s; null where it never was. */
  readonly held: (run: Run) => readonly [fromS: number, toS: number] | null;
  readonly planned: Planned['actions'];
  readonly untilS: number;
}

const SECONDS_AN_HOUR = 3600;
/** Of the open air at sea level, Pa. */
const ATMOSPHERE_PA = 101325;
const STATED_AT_PA = 10000;
const LEAST_WATCH_S = 2;
/** Until what moved has come to rest, s. */
const SETTLES_S = 0.6;
const COCK_SHUT_S = 5;
const TRAIN_UNTIL_S = 58;
const NEAR_PA = 100;
const STARTED_BY_S = 130;
const NOTHING_PLANNED: Planned['actions'] = [];

/**
 * Equation: q = V · Δp / (p_air · t), gas of the temperature of the train at the pressure of the air.
 * Valid for: a shut length at one temperature; q is the mean over the watch.
 * Source: the gas law at constant temperature, as the arithmetic of valve proving has it (EN 1643).
 */
export function leakRateSum(plant: QuizPlant, chance: RandomState): Sum | null {
  const scenes = scenesOf(plant);
  if (scenes.length === 0) return null;
  const scene = pick(chance, scenes);
  const volumeM3 = volumeOf(plant, scene.nodes);
  const tolerances = pickTolerances(chance);
  const severity = severityFor(plant, scene, between(chance, 0, 1), volumeM3);
  const planned: Planned = {
    faults: [standing(scene.fault, severity)],
    actions: scene.planned,
  };
  const run = startRun(plant, tolerances, planned);
  run.advanceTo(scene.untilS);
  const held = scene.held(run);
  if (held === null || held[1] - held[0] < LEAST_WATCH_S) return null;
  const length = held[1] - held[0];
  const fromS = tenths(held[0] + between(chance, 0, 0.2) * length);
  const toS = tenths(held[1] - between(chance, 0, 0.3) * length);
  const channel = `gas.${scene.nodes[scene.nodes.length - 1]}.pressure`;
  const startPa = recorded(run, channel, fromS);
  const endPa = recorded(run, channel, toS);
  if (startPa === undefined || endPa === undefined) return null;
  const rises = endPa > startPa;
  if (rises !== (scene.tells === 'space-fills')) return null;
  const watched = run.timeS() < toS + 1 ? run : runUntil(run, toS + 1);
  return {
    topic: 'calculation/leak rate',
    skills: ['fuel'],
    difficulty: scene.tells === 'train-shut' ? 1 : 0.7,
    run: itemRun(plant, tolerances, planned, watched),
    caution: { code: 'quiz.sum.caution.gas' },
    givens: {
      volume: { value: volumeM3, of: 'pipe volume' },
      start: { value: startPa, of: 'gas pressure' },
      end: { value: endPa, of: 'gas pressure' },
      time: { value: toS - fromS, of: 'time' },
      air: { value: ATMOSPHERE_PA, of: 'gas pressure' },
    },
    tells: (of) => [
      { code: `quiz.sum.leak.${scene.tells}`, with: { volume: of('volume') } },
      {
        code: rises ? 'quiz.sum.leak.rose' : 'quiz.sum.leak.fell',
        with: { start: of('start'), end: of('end'), time: of('time') },
      },
      { code: 'quiz.sum.leak.air', with: { air: of('air') } },
    ],
    asks: { code: 'quiz.sum.leak.asks' },
    reckon: leakDm3H,
    of: 'leak',
    tolerance: 0.06,
    working: (of, value, key) => [
      {
        code: 'quiz.sum.leak.work.law',
        with: { change: amount(Math.abs(value('end') - value('start')), 'gas pressure') },
      },
      {
        code: 'quiz.sum.leak.work.part',
        with: {
          change: amount(Math.abs(value('end') - value('start')), 'gas pressure'),
          air: of('air'),
          part: partOf(value),
        },
      },
      {
        code: 'quiz.sum.leak.work.hour',
        with: {
          part: partOf(value),
          volume: of('volume'),
          time: of('time'),
          leak: amount(key, 'leak'),
        },
      },
    ],
    slips: (value, key) => {
      const high = Math.max(value('start'), value('end'));
      const change = Math.abs(value('end') - value('start'));
      return [
        { value: (key * value('air')) / high, why: { code: 'quiz.sum.leak.slip.gauge' } },
        { value: key / 60, why: { code: 'quiz.sum.leak.slip.minute' } },
        { value: (key * high) / change, why: { code: 'quiz.sum.leak.slip.no-difference' } },
        { value: (key * value('time')) / 60, why: { code: 'quiz.sum.leak.slip.as-a-minute' } },
      ];
    },
  };
}

function partOf(value: Values): number {
  return rounded(Math.abs(value('end') - value('start')) / value('air'), 4);
}

function leakDm3H(value: Values): number {
  const freeM3 = (value('volume') * Math.abs(value('end') - value('start'))) / value('air');
  return ((1000 * freeM3) / value('time')) * SECONDS_AN_HOUR;
}

function scenesOf(plant: QuizPlant): readonly Scene[] {
  const { variant, gasTrain } = plant.plan.setup.plant;
  const cock = gasTrain.edges.find(({ kind }) => kind === 'cock')?.id;
  const before = nodesToRegulator(plant);
  const proved = variant.valveProving === 'before start';
  const filling = proved ? faultsThere(plant, ['upstream valve seat passes']) : [];
  const emptying = proved
    ? faultsThere(plant, ['downstream valve seat passes', 'vent valve seat passes'])
    : [];
  const escaping =
    cock === undefined || before.length === 0
      ? []
      : faultsThere(plant, ['gas escapes at the cock joint', 'gas escapes at the strainer joint']);
  const shut: Planned['actions'] = [
    { t: COCK_SHUT_S, type: 'turn-cock', cock: cock ?? '', opening: 0 },
  ];
  return [
    ...filling.map((fault): Scene => provingScene('space-fills', fault, 'hold empty')),
    ...emptying.map((fault): Scene => provingScene('space-empties', fault, 'hold full')),
    ...escaping.map(
      (fault): Scene => ({
        tells: 'train-shut',
        fault,
        nodes: before,
        passes: [1.5, 12],
        held: (run) => [COCK_SHUT_S + 2, shutInUntil(run, before)],
        planned: shut,
        untilS: TRAIN_UNTIL_S,
      }),
    ),
  ];
}

function provingScene(tells: Scene['tells'], fault: string, hold: string): Scene {
  return {
    tells,
    fault,
    nodes: ['interspace'],
    passes: [5, 35],
    held: (run) => {
      const events = run.events();
      const began = events.findIndex(
        (e) => e.type === 'step' && e.step === `valve proving: ${hold}`,
      );
      const start = events[began];
      const end = events.slice(began + 1).find((e) => e.type === 'step' || e.type === 'lockout');
      if (start === undefined || end === undefined) return null;
      return [start.t + SETTLES_S, end.t - 0.2];
    },
    planned: NOTHING_PLANNED,
    untilS: STARTED_BY_S,
  };
}

/** Until the length comes near what stands behind the regulator, which would flow back into it, s. */
function shutInUntil(run: Run, nodes: readonly string[]): number {
  const { edges } = run.setup.plant.gasTrain;
  const last = nodes[nodes.length - 1];
  const behind = edges.find(({ from, kind }) => from === last && kind === 'regulator')?.to;
  let untilS = COCK_SHUT_S;
  for (; untilS < TRAIN_UNTIL_S - 1; untilS++) {
    const pa = recorded(run, `gas.${last}.pressure`, untilS + 1) ?? 0;
    const behindPa = recorded(run, `gas.${behind}.pressure`, untilS + 1) ?? 0;
    if (pa < behindPa + NEAR_PA) break;
  }
  return untilS;
}

/** What lies between the first cock and the regulator, shut in by both. */
function nodesToRegulator(plant: QuizPlant): readonly string[] {
  const { edges } = plant.plan.setup.plant.gasTrain;
  const nodes: string[] = [];
  let edge = edges.find(({ kind }) => kind === 'cock');
  while (edge !== undefined && edge.kind !== 'regulator') {
    const node = edge.to;
    nodes.push(node);
    edge = edges.find(({ from }) => from === node);
  }
  return edge === undefined ? [] : nodes;
}

function volumeOf(plant: QuizPlant, nodes: readonly string[]): number {
  const { gasTrain } = plant.plan.setup.plant;
  const dm3 = gasTrain.nodes
    .filter(({ id }) => nodes.includes(id))
    .reduce((sum, { volumeDm3 }) => sum + volumeDm3, 0);
  return dm3 / 1000;
}

/** Stated at 100 mbar; where there is less behind it, less passes. */
function severityFor(
  plant: QuizPlant,
  { passes: [low, high] }: Scene,
  share: number,
  volumeM3: number,
): number {
  const { nodes } = plant.plan.setup.plant.gasTrain;
  const trainPa = nodes.find(({ id }) => id === 'regulated')?.startGaugePa ?? STATED_AT_PA;
  const volumes = low + (high - low) * share * share;
  return Math.round(1000 * volumeM3 * volumes * Math.sqrt(STATED_AT_PA / trainPa));
}

function runUntil(run: Run, untilS: number): Run {
  run.advanceTo(untilS);
  return run;
}

function tenths(seconds: number): number {
  return Math.round(10 * seconds) / 10;
}
