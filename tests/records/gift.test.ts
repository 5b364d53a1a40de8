import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { giftText, withoutForbidden } from '../../src/records/index.ts';
import { readGift } from './read-gift.ts';
import { CHOICE, NUMBER, ORDER, paperOf, SAMPLES } from './samples.ts';

const PROPERTY = { numRuns: 300, seed: 66 };
/** Texts full of what the format takes for its own. */
const touchy = fc.string({
  unit: fc.oneof(
    fc.constantFrom(...'~=#{}:\\\n\r%->[]/$ 5', '//', '->', '[html]', '%50%', '\\n', '::', '####'),
    fc.string({ minLength: 1, maxLength: 1, unit: 'grapheme' }),
  ),
  maxLength: 14,
});

/** What stays of a text in this format: without forbidden signs, white space at its ends and `->`. */
function kept(text: string): string {
  return withoutForbidden(text).trim().replace(/\r\n?/g, '\n').replaceAll('->', '→');
}

describe('questions in GIFT', () => {
  it('give a reader back any stem, options, key and reasons', () => {
    fc.assert(
      fc.property(
        touchy,
        fc.array(touchy, { minLength: 2, maxLength: 4 }),
        touchy,
        (asks, texts, why) => {
          const options = texts.map((text) => ({ text: `${text}.`, why: [`${why}.`] }));
          const given = { ...CHOICE, options, key: 1, asks: `${asks}?` };
          const [read, more] = readGift(giftText(paperOf([given])));
          expect(more).toBeUndefined();
          expect(read?.title).toBe(CHOICE.id);
          expect(read?.stem.endsWith(`\n${kept(`${asks}?`)}`)).toBe(true);
          expect(read?.answers.map(({ text }) => text)).toEqual(
            options.map(({ text }) => kept(text)),
          );
          expect(read?.answers.map(({ sign }) => sign)).toEqual(
            options.map((_, place) => (place === 1 ? '=' : '~')),
          );
          for (const { feedback, weight, sign } of read?.answers ?? []) {
            expect(feedback).toBe(kept(`${why}.`));
            expect(weight === null || weight === (sign === '=' ? '100' : '0')).toBe(true);
          }
        },
      ),
      PROPERTY,
    );
  });

  it('ask for an order as a matching of places, in the right order', () => {
    fc.assert(
      fc.property(touchy, fc.shuffledSubarray([0, 1, 2, 3], { minLength: 4 }), (text, key) => {
        const steps = key.map((_, place) => ({ text: `${text}.${place}`, why: [] }));
        const given = { ...ORDER, steps, key };
        const [read] = readGift(giftText(paperOf([given])));
        expect(read?.answers.map(({ text: said }) => said)).toEqual(
          key.map((_, place) => `Place ${place + 1}`),
        );
        expect(read?.answers.map((one) => one.with)).toEqual(
          key.map((place) => kept(`${text}.${place}`)),
        );
      }),
      { numRuns: 100, seed: 67 },
    );
  });

  it('hold a number with exactly the reach that counts as right', () => {
    const [read] = readGift(giftText(paperOf([NUMBER])));
    const [middle = 0, reach = 0] = read?.answers[0]?.text.split(':').map(Number) ?? [];
    expect(read?.isNumber).toBe(true);
    expect(middle - reach).toBeCloseTo(NUMBER.from, 3);
    expect(middle + reach).toBeCloseTo(NUMBER.to, 3);
    expect(read?.stem).toContain('dm³/h');
    expect(read?.general).toContain('Volume × fall ÷ time');
  });

  it('stand in categories by skill, whatever those are called', () => {
    fc.assert(
      fc.property(touchy, (category) => {
        const { questions, ...paper } = paperOf(SAMPLES, 'Reading the chart');
        const mixed = questions.map((one, i) =>
          i % 2 === 0 ? one : { ...one, category: `a${category}b` },
        );
        const read = readGift(giftText({ ...paper, questions: mixed }));
        expect(read.map(({ title }) => title)).toEqual(
          [mixed[0], mixed[2], mixed[1], mixed[3]].map((one) => one?.item.id),
        );
        expect(read[0]?.category).toBe('Reading the chart');
        expect(read[2]?.category).toBe(withoutForbidden(`a${category}b`).replace(/\s+/g, ' '));
      }),
      { numRuns: 100, seed: 68 },
    );
  });
});
