/** How well the sureness that someone states fits what comes of it. */
import type { GivenAnswer } from '../item/given-answer.ts';
import { CONFIDENCES, type Confidence } from '../item/response.ts';

export interface CalibrationRow {
  readonly confidence: Confidence;
  readonly count: number;
  readonly right: number;
  /** Of these, how many are right, 0 to 1; null where there is none. */
  readonly share: number | null;
  /** Where the true share may well lie: the interval of Wilson at 95 %; 0 to 1 where there is none. */
  readonly low: number;
  readonly high: number;
}

export const CALIBRATION_VERDICTS = [
  'too few to say',
  'too sure',
  'about right',
  'too unsure',
] as const;
export type CalibrationVerdict = (typeof CALIBRATION_VERDICTS)[number];

export interface Calibration {
  /** One for each of `CONFIDENCES`. */
  readonly rows: readonly CalibrationRow[];
  readonly count: number;
  readonly right: number;
  /** Mean of what was stated, 0 to 1; null where nothing was. */
  readonly stated: number | null;
  /** Mean square of stated chance less outcome, 0 best to 1 (Brier 1950); null where there is none. */
  readonly brier: number | null;
  /** The same for whoever always states his own share of right answers. */
  readonly brierOfBaseRate: number | null;
  readonly verdict: CalibrationVerdict;
}

/** Below this a run of luck says as much. */
const FEWEST = 20;
/** Nobody can state it closer than the steps that are offered. */
const NO_MATTER = 0.05;
/** Of a normal distribution, 95 % lie within so many standard deviations. */
const Z_95 = 1.96;

export function calibrationOf(answers: readonly GivenAnswer[]): Calibration {
  const count = answers.length;
  const right = answers.filter((answer) => answer.right).length;
  const rows = CONFIDENCES.map((confidence) => rowOf(confidence, answers));
  const base = count === 0 ? null : right / count;
  return {
    rows,
    count,
    right,
    stated: meanOf(answers, ({ confidence }) => confidence / 100),
    brier: meanOf(answers, (answer) => {
      const miss = answer.confidence / 100 - (answer.right ? 1 : 0);
      return miss * miss;
    }),
    brierOfBaseRate: base === null ? null : base * (1 - base),
    verdict: verdictOf(rows, count),
  };
}

function rowOf(confidence: Confidence, answers: readonly GivenAnswer[]): CalibrationRow {
  const own = answers.filter((answer) => answer.confidence === confidence);
  const count = own.length;
  const right = own.filter((answer) => answer.right).length;
  if (count === 0) return { confidence, count, right, share: null, low: 0, high: 1 };
  const share = right / count;
  const zz = (Z_95 * Z_95) / count;
  const middle = (share + zz / 2) / (1 + zz);
  const half = (Z_95 * Math.sqrt((share * (1 - share)) / count + zz / (4 * count))) / (1 + zz);
  return {
    confidence,
    count,
    right,
    share,
    low: Math.max(0, middle - half),
    high: Math.min(1, middle + half),
  };
}

/**
 * Were each chance as stated, the number of right answers would be their sum, with the variance
 * Σ p(1 − p). Too sure is who stays below by more than that explains, and by more than matters.
 */
function verdictOf(rows: readonly CalibrationRow[], count: number): CalibrationVerdict {
  if (count < FEWEST) return 'too few to say';
  let over = 0;
  let variance = 0;
  for (const row of rows) {
    const chance = row.confidence / 100;
    over += row.count * chance - row.right;
    variance += row.count * chance * (1 - chance);
  }
  const limit = Math.max(Z_95 * Math.sqrt(variance), NO_MATTER * count);
  if (over > limit) return 'too sure';
  return over < -limit ? 'too unsure' : 'about right';
}

function meanOf(
  answers: readonly GivenAnswer[],
  of: (answer: GivenAnswer) => number,
): number | null {
  if (answers.length === 0) return null;
  let sum = 0;
  for (const answer of answers) sum += of(answer);
  return sum / answers.length;
}
