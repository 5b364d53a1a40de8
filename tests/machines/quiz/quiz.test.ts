import { describe, expect, it } from 'vitest';
import type { QuizEvent, QuizKind, QuizResponse, Sureness } from '../../../machines/index.ts';
import {
  answer,
  atMinute,
  begin,
  FINISH,
  goTo,
  ITEMS,
  NEXT,
  pass,
  quizAfter,
  refusalOf,
} from './story.ts';

const AT_ONCE: readonly QuizKind[] = ['short', 'standard', 'one skill', 'got wrong', 'due'];

function responding(response: QuizResponse): QuizEvent {
  return { type: 'answer', place: 0, response, confidence: 75 };
}

describe('a quiz', () => {
  it('[QZ-1] begins once, and takes nothing before', () => {
    const empty = quizAfter();
    for (const event of [answer(0), NEXT, pass(0), goTo(0), FINISH]) {
      expect(refusalOf(empty, event)).toBe('not begun');
    }
    const begun = quizAfter(begin('short'));
    expect(begun).toMatchObject({
      phase: 'asked',
      mode: 'short',
      seed: 7,
      items: ITEMS,
      startedISO: atMinute(0),
      place: 0,
      answers: [null, null, null],
    });
    expect(refusalOf(begun, begin('short'))).toBe('begun already');
    expect(refusalOf(quizAfter(begin('exam')), begin('short'))).toBe('begun already');
  });
  it('[QZ-2] asks something, and nothing twice', () => {
    expect(refusalOf(quizAfter(), begin('short', []))).toBe('no questions');
    expect(refusalOf(quizAfter(), begin('exam', ['a', 'b', 'a']))).toBe('question twice');
  });
  it('[QZ-3] takes an answer for the question shown alone', () => {
    const second = quizAfter(begin('short'), answer(0), NEXT);
    expect(refusalOf(second, answer(0))).toBe('not this question');
    expect(refusalOf(second, answer(2))).toBe('not this question');
    expect(refusalOf(second, answer(1))).toBeNull();
  });
  it.each<[QuizResponse, boolean]>([
    [{ is: 'choice', option: 2 }, true],
    [{ is: 'choice', option: -1 }, false],
    [{ is: 'choice', option: 0.5 }, false],
    [{ is: 'order', order: [2, 0, 1] }, true],
    [{ is: 'order', order: [2, 0, 2] }, false],
    [{ is: 'order', order: [0, 1, 3] }, false],
    [{ is: 'order', order: [] }, false],
    [{ is: 'number', value: -0.4 }, true],
    [{ is: 'number', value: Number.NaN }, false],
  ])('[QZ-3] asks for something in the answer: %j', (response, isTaken) => {
    for (const mode of ['short', 'exam'] as const) {
      const refusal = refusalOf(quizAfter(begin(mode)), responding(response));
      expect(refusal).toBe(isTaken ? null : 'nothing answered');
    }
  });
  it('[QZ-4] wants to know how sure one is, with the answer', () => {
    for (const mode of ['short', 'exam'] as const) {
      const asked = quizAfter(begin(mode));
      expect(refusalOf(asked, answer(0, 0, 60 as Sureness))).toBe('say how sure you are');
      expect(refusalOf(asked, answer(0, 0, null as unknown as Sureness))).toBe(
        'say how sure you are',
      );
      expect(quizAfter(begin(mode), answer(0, 2, 95)).answers[0]).toEqual({
        response: { is: 'choice', option: 2 },
        confidence: 95,
        atISO: atMinute(1),
      });
    }
  });
  it('[QZ-5] tells on at once, and goes on only after the answer', () => {
    for (const mode of AT_ONCE) {
      expect(refusalOf(quizAfter(begin(mode)), NEXT)).toBe('answer first');
      expect(quizAfter(begin(mode), answer(0))).toMatchObject({ phase: 'answered', place: 0 });
    }
  });
  it('[QZ-6] goes through its questions in their order, and then is over', () => {
    const second = quizAfter(begin('short'), answer(0), NEXT);
    expect(second).toMatchObject({ phase: 'asked', place: 1, endedISO: null });
    const whole = [answer(0), NEXT, answer(1), NEXT, answer(2)];
    expect(quizAfter(begin('due'), ...whole).phase).toBe('answered');
    const over = quizAfter(begin('due'), ...whole, NEXT);
    expect(over).toMatchObject({ phase: 'over', endedISO: atMinute(6) });
    expect(over.answers).not.toContain(null);
  });
  it('[QZ-7] does not take back what has been told on', () => {
    const answered = quizAfter(begin('short'), answer(0));
    expect(refusalOf(answered, answer(0, 1))).toBe('already answered');
    expect(refusalOf(answered, goTo(0))).toBe('no going back');
    const second = quizAfter(begin('short'), answer(0), NEXT);
    expect(refusalOf(second, goTo(0))).toBe('no going back');
    expect(refusalOf(second, goTo(2))).toBe('no going back');
  });
  it('[QZ-8] may be left before or after an answer, and keeps what is answered', () => {
    const left = quizAfter(begin('standard'), answer(0, 1), NEXT, FINISH);
    expect(left).toMatchObject({ phase: 'over', endedISO: atMinute(3) });
    expect(left.answers.map((one) => one !== null)).toEqual([true, false, false]);
    expect(quizAfter(begin('standard'), answer(0), FINISH).phase).toBe('over');
  });
});

describe('a question that cannot be asked', () => {
  it('[QZ-14] is passed over without an answer, the last one too', () => {
    const begun = quizAfter(begin('short'));
    expect(refusalOf(begun, pass(1))).toBe('not this question');
    expect(quizAfter(begin('short'), pass(0))).toMatchObject({ phase: 'asked', place: 1 });
    const over = quizAfter(begin('short'), pass(0), answer(1), NEXT, pass(2));
    expect(over).toMatchObject({ phase: 'over', endedISO: atMinute(4) });
    expect(over.answers.map((one) => one !== null)).toEqual([false, true, false]);
  });
  it('[QZ-14] is not one that is answered, nor one of an exam, where one goes on without it', () => {
    expect(refusalOf(quizAfter(begin('due'), answer(0)), pass(0))).toBe('already answered');
    expect(refusalOf(quizAfter(begin('exam')), pass(0))).toBe('no need to pass');
  });
});

describe('an exam', () => {
  it('[QZ-9] lets every question be gone to, answered or not', () => {
    expect(quizAfter(begin('exam'), NEXT).place).toBe(1);
    expect(quizAfter(begin('exam'), goTo(2)).place).toBe(2);
    expect(quizAfter(begin('exam'), answer(0), NEXT, goTo(0)).place).toBe(0);
    const sitting = quizAfter(begin('exam'));
    for (const place of [-1, 3, 0.5, Number.NaN]) {
      expect(refusalOf(sitting, goTo(place))).toBe('no such question');
    }
    expect(refusalOf(quizAfter(begin('exam'), goTo(2)), NEXT)).toBe('last question');
  });
  it('[QZ-10] lets an answer be changed, and tells nothing', () => {
    const sitting = quizAfter(begin('exam'), answer(0, 1, 35), NEXT, goTo(0), answer(0, 2, 95));
    expect(sitting.phase).toBe('sitting');
    expect(sitting.answers[0]).toEqual({
      response: { is: 'choice', option: 2 },
      confidence: 95,
      atISO: atMinute(4),
    });
    expect(sitting.answers.slice(1)).toEqual([null, null]);
  });
  it('[QZ-11] is over when it is handed in, and by nothing else', () => {
    const answers = [answer(0), NEXT, answer(1), NEXT, answer(2)];
    expect(quizAfter(begin('exam'), ...answers).phase).toBe('sitting');
    expect(quizAfter(begin('exam'), ...answers, FINISH).phase).toBe('over');
    const early = quizAfter(begin('exam'), goTo(1), answer(1), FINISH);
    expect(early.answers.map((one) => one !== null)).toEqual([false, true, false]);
  });
});

describe('after the end', () => {
  it('[QZ-12] everything is refused', () => {
    for (const mode of ['exam', ...AT_ONCE] as const) {
      const over = quizAfter(begin(mode), answer(0), FINISH);
      for (const event of [begin('short'), answer(0), NEXT, pass(0), goTo(1), FINISH]) {
        expect(refusalOf(over, event)).toBe('over');
      }
    }
  });
});
