/** Proves an item anew by plain arithmetic: from its run, its readings and the atlas, and nothing else. */
import { NOT_REACHED } from '../../../src/diagnosis/atlas/band.ts';
import { sampleStart } from '../../../src/diagnosis/index.ts';
import type { Item, Option, QuizPlant } from '../../../src/quiz/index.ts';
import { setupOfRun } from '../../../src/quiz/index.ts';

interface Seen {
  readonly key: number;
  readonly bin: number;
}

const SURPRISE = 0.02;

export type Mistake = string;

/** What does not hold of an item; empty where it is proved. */
export function mistakesOf(plant: QuizPlant, item: Item): readonly Mistake[] {
  if (item.answer !== 'choice' && item.answer !== 'spot') return ['no options'];
  if (item.run === null) return ['no run'];
  const { sample } = sampleStart(setupOfRun(plant.plan, item.run), plant.plan);
  const { atlas } = plant;
  const mistakes: Mistake[] = [];
  const seenAt = (check: string, moment: string, aspect: string): Seen | null => {
    const key = atlas.keys.findIndex(
      (one) => one.check === check && one.moment === moment && one.aspect === aspect,
    );
    const at = atlas.keys[key];
    const value = sample.get(`${check}@${moment}#${aspect}`);
    if (at === undefined || value === undefined) return null;
    return { key, bin: at.bins.indexOf(binOf(at.band, value)) };
  };
  for (const { check, moment, aspect, value } of item.stem.readings) {
    if (sample.get(`${check}@${moment}#${aspect}`) !== value) mistakes.push(`misread: ${check}`);
  }
  const named = item.stem.readings.map((one) => seenAt(one.check, one.moment, one.aspect));
  const words = [
    seenAt('history|', 'lockout', 'cause'),
    seenAt('history|', 'lockout', 'step'),
    seenAt('watch one start|', 'standing', 'ends in'),
  ];
  const seen = [...words, ...named].filter((one) => one !== null);
  const shares = posterior(plant, seen);
  const faults = item.run.faults.map(({ fault }) => fault);
  const causesOf = (option: Option): readonly number[] => {
    const named = option.says.with?.cause;
    const fault =
      typeof named === 'object' && named.is === 'cause' ? named.fault : (faults[0] ?? null);
    return [atlas.causes.findIndex((one) => one.fault === fault)];
  };
  item.options.forEach((option, place) => {
    if (item.answer === 'spot' && place !== item.key) return;
    const share = causesOf(option).reduce((sum, cause) => sum + (shares[cause] ?? 0), 0);
    if (place === item.key && share < 0.9) mistakes.push(`key has ${share}`);
    if (place !== item.key && share > 0.05) mistakes.push(`distractor has ${share}`);
    if (place === item.key || item.answer === 'spot') return;
    const told = option.decidedBy;
    const refuting = told === null ? null : seenAt(told.check, told.moment, told.aspect);
    if (refuting === null) {
      mistakes.push('nothing rules out a distractor');
      return;
    }
    const rest = seen.filter(
      ({ key }) =>
        atlas.keys[key]?.check !== told?.check || atlas.keys[key]?.moment !== told?.moment,
    );
    const left = particleWeights(plant, rest);
    const alike = agreeing(plant, left, refuting, causesOf(option));
    if (alike > 0.05) mistakes.push(`${told?.check} rules out only ${1 - alike}`);
  });
  const key = item.options[item.key];
  const keyFault = key === undefined ? undefined : causesOf(key)[0];
  if (atlas.causes[keyFault ?? -1]?.fault !== faults[0]) mistakes.push('key is not what is wrong');
  return mistakes;
}

function binOf(band: QuizPlant['atlas']['keys'][number]['band'], value: number | string): string {
  if (typeof value === 'string') return value;
  if (band === null || Number.isNaN(value)) return 'unsteady';
  if (value >= band.low && value <= band.high) return 'in band';
  if (Math.abs(value) <= band.dead) return 'dead';
  return value < band.low ? 'low' : 'high';
}

/** Share of each cause. */
function posterior(plant: QuizPlant, seen: readonly Seen[]): readonly number[] {
  const weights = particleWeights(plant, seen);
  const all = weights.reduce((a, b) => a + b, 0);
  const sums = plant.atlas.causes.map(() => 0);
  weights.forEach((weight, p) => {
    const cause = plant.atlas.causeOf[p] as number;
    sums[cause] = (sums[cause] as number) + weight / all;
  });
  return sums;
}

/** Prior × Π over the checks made: 1 − ε where a particle differs in as little as any does, else less. */
function particleWeights({ atlas }: QuizPlant, seen: readonly Seen[]): number[] {
  const counts = atlas.causes.map(
    (_, cause) => atlas.causeOf.filter((one) => one === cause).length,
  );
  const weights = Array.from(atlas.causeOf, (cause) => {
    return (atlas.causes[cause]?.priorWeight ?? 0) / (counts[cause] as number);
  });
  const checks = new Map<string, Seen[]>();
  for (const one of seen) {
    const at = atlas.keys[one.key];
    if (at === undefined || one.bin < 0 || at.bins.length < 2) continue;
    const name = `${at.check}@${at.moment}`;
    checks.set(name, [...(checks.get(name) ?? []), one]);
  }
  for (const told of checks.values()) {
    const off = weights.map(
      (_, p) => told.filter(({ key, bin }) => atlas.keys[key]?.column[p] !== bin).length,
    );
    const least = Math.min(...off);
    const most = Math.max(...told.map(({ key }) => atlas.keys[key]?.bins.length ?? 2)) - 1;
    weights.forEach((weight, p) => {
      const more = (off[p] as number) - least;
      const power = 1 + (more - 1) / told.length;
      weights[p] = weight * (more === 0 ? 1 - SURPRISE : (SURPRISE / most) ** power);
    });
  }
  return weights;
}

function agreeing(
  { atlas }: QuizPlant,
  weights: readonly number[],
  { key, bin }: Seen,
  causes: readonly number[],
): number {
  const at = atlas.keys[key];
  let all = 0;
  let own = 0;
  weights.forEach((weight, p) => {
    if (!causes.includes(atlas.causeOf[p] as number)) return;
    all += weight;
    if (at?.column[p] === bin && at.bins[bin] !== NOT_REACHED) own += weight;
  });
  return own / all;
}
