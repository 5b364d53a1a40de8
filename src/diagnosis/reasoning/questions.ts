import { type Particles, spansOf } from './particles.ts';

/** A check in one situation, as one question: its answer is all that it tells there at once. */
export interface Question {
  readonly check: string;
  readonly moment: string;
  /** Places in `particles.keys`. */
  readonly keys: readonly number[];
  /** The answer each particle would give, 0 to `answers` − 1. */
  readonly column: Uint16Array;
  readonly answers: number;
  /** The answer of all particles of a cause; -1 where they differ. */
  readonly answerOf: Int32Array;
  /** Questions that split the particles alike have the same; what one is worth, all are. */
  readonly split: number;
}

/** Every check in every situation, in the order of the keys. Made once for an atlas. */
export function questionsOf(particles: Particles): readonly Question[] {
  const byName = new Map<string, number[]>();
  particles.keys.forEach(({ check, moment }, key) => {
    const name = `${check}@${moment}`;
    const keys = byName.get(name);
    if (keys === undefined) byName.set(name, [key]);
    else keys.push(key);
  });
  const spans = spansOf(particles);
  const splits = new Map<string, number>();
  return [...byName.values()].map((keys) => {
    const question = questionOf(particles, spans, keys);
    // Answers are counted as they come up, so that the same split has the same column.
    const name = String.fromCharCode(...question.column);
    const split = splits.get(name) ?? splits.size;
    splits.set(name, split);
    return { ...question, split };
  });
}

function questionOf(
  particles: Particles,
  spans: Uint32Array,
  keys: readonly number[],
): Omit<Question, 'split'> {
  const { check, moment } = particles.keys[keys[0] as number] as Particles['keys'][number];
  const { column, answers } = joined(particles, keys);
  const answerOf = new Int32Array(particles.causes.length);
  for (let cause = 0; cause < answerOf.length; cause++) {
    const from = spans[cause] as number;
    const to = spans[cause + 1] as number;
    let answer = from < to ? (column[from] as number) : -1;
    for (let p = from; p < to; p++) if (column[p] !== answer) answer = -1;
    answerOf[cause] = answer;
  }
  return { check, moment, keys, column, answers, answerOf };
}

/** Bins of several keys as one number, counted in the order in which they come up. */
function joined(
  { keys: all, causeOf }: Particles,
  keys: readonly number[],
): { readonly column: Uint16Array; readonly answers: number } {
  let column = new Uint16Array(causeOf.length);
  let answers = 1;
  for (const key of keys) {
    const bins = all[key]?.column;
    if (bins === undefined) continue;
    const next = new Uint16Array(column.length);
    const numbers = new Map<number, number>();
    for (let p = 0; p < next.length; p++) {
      const both = (column[p] as number) * 256 + (bins[p] as number);
      let number = numbers.get(both);
      if (number === undefined) {
        number = numbers.size;
        numbers.set(both, number);
      }
      next[p] = number;
    }
    column = next;
    answers = numbers.size;
  }
  return { column, answers };
}
