import type * as Diagnosis from '../../diagnosis/index.ts';
import type { Atlas } from '../../diagnosis/index.ts';

const WARM_UP_RUNS = 30;
const RUNS = 41;

export interface RankingFigures {
  readonly questions: number;
  readonly particles: number;
  readonly medianMs: number;
  readonly bestMs: number;
  /** Time of a ranking over that of weighing the atlas once: each bin of each particle, times its share. */
  readonly ratio: number;
}

/** How long it takes, after one more reading, until suspects and checks are ranked anew. */
export function measureRanking(diagnosis: typeof Diagnosis, atlas: Atlas): RankingFigures {
  const { afterSeeing, priorBelief, questionCost, questionsOf, rankChecks, rankedSuspects } =
    diagnosis;
  const questions = questionsOf(atlas);
  const before = priorBelief(atlas);
  const seen = atlas.keys.flatMap(({ moment, bins }, key) =>
    moment === 'purge' && bins.length > 1 ? [{ key, bin: 0 }] : [],
  );
  let turn = 0;
  const rank = () => {
    const reading = seen[turn++ % seen.length];
    const belief = afterSeeing(before, atlas, reading === undefined ? [] : [reading]);
    rankedSuspects(atlas, belief);
    rankChecks(atlas, belief, questions, (question) => questionCost(atlas, question));
  };
  const shares = diagnosis.sharesOf(before);
  const ranking: number[] = [];
  const weighing: number[] = [];
  for (let i = 0; i < WARM_UP_RUNS + RUNS; i++) {
    const times = [timeOf(rank), timeOf(() => weigh(atlas, shares))] as const;
    if (i < WARM_UP_RUNS) continue;
    ranking.push(times[0]);
    weighing.push(times[1]);
  }
  const round = (x: number): number => Math.round(100 * x) / 100;
  return {
    questions: questions.length,
    particles: atlas.causeOf.length,
    medianMs: round(middleOf(ranking)),
    bestMs: round(Math.min(...ranking)),
    ratio: round(middleOf(ranking) / middleOf(weighing)),
  };
}

function weigh({ keys }: Atlas, shares: Float64Array): number {
  let sum = 0;
  for (const { column } of keys) {
    for (let p = 0; p < column.length; p++) sum += (column[p] as number) * (shares[p] as number);
  }
  return sum;
}

function timeOf(act: () => unknown): number {
  const start = process.hrtime.bigint();
  act();
  return Number(process.hrtime.bigint() - start) / 1e6;
}

function middleOf(times: readonly number[]): number {
  return [...times].sort((a, b) => a - b)[Math.floor(times.length / 2)] as number;
}

export function rankingInWords(figures: RankingFigures | null): string[] {
  if (figures === null) return ['ranking       not measured: no atlas'];
  const { questions, particles, medianMs, bestMs, ratio } = figures;
  return [
    `ranking       ${medianMs} ms for suspects and checks after a reading (median of ${RUNS}; best ${bestMs}), ${ratio} times one pass over the atlas (dairy, ${questions} checks, ${particles} plants)`,
  ];
}
