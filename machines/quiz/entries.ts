/** What is said in the course of a quiz. */

/** An exam tells nothing before it is handed in; the others differ only in what is asked. */
export type QuizKind = 'short' | 'standard' | 'exam' | 'one skill' | 'got wrong' | 'due';

/** What was answered; the chart does not know what would be right. */
export type QuizResponse =
  | { readonly is: 'choice'; readonly option: number }
  /** Places of the steps, as they are put in order. */
  | { readonly is: 'order'; readonly order: readonly number[] }
  /** SI. */
  | { readonly is: 'number'; readonly value: number };

/** How sure someone may say to be, as a chance in a hundred. The least is that of a guess among three. */
export const SURE_WORDS = [35, 55, 75, 95] as const;
export type Sureness = (typeof SURE_WORDS)[number];

export type QuizEvent =
  | {
      readonly type: 'begin';
      readonly mode: QuizKind;
      /** By which the items were chosen. */
      readonly seed: number;
      /** Ids, in the order asked. */
      readonly items: readonly string[];
    }
  | {
      readonly type: 'answer';
      /** Place of the question, 0 the first: an answer meant for another is not taken. */
      readonly place: number;
      readonly response: QuizResponse;
      readonly confidence: Sureness;
    }
  | { readonly type: 'next' }
  /** The question shown cannot be asked: its item is made no more. It stays without an answer. */
  | { readonly type: 'pass'; readonly place: number }
  /** Exam: to any question, answered or not. */
  | { readonly type: 'go to'; readonly place: number }
  /** Exam: hand it in. Elsewhere: leave it at what is answered. */
  | { readonly type: 'finish' };

/**
 * An entry with the time of the device. It is only noted: a clock that was put back in the middle of
 * a quiz must not cost an answer.
 */
export type QuizEntry = { readonly atISO: string } & QuizEvent;
