/** A written item as one of the quiz: proved like any other where it says what is wrong and what is read. */
import type { QuizFile, WrittenItem } from '../../scenario/index.ts';
import type { ChoiceItem, Option } from '../item/item.ts';
import type { QuizPlant } from '../item/maker.ts';
import type { Statement } from '../item/statement.ts';
import { type ProvedEvidence, proveWritten, type WrittenTrouble } from './prove-written.ts';
import { cardOfWritten, shownOrder } from './written-cards.ts';

export type WrittenMade =
  | { readonly ok: true; readonly item: ChoiceItem }
  | { readonly ok: false; readonly troubles: readonly WrittenTrouble[] };

/** @param plant of the item; null where it names none */
export function writtenItem(
  file: Pick<QuizFile, 'id'>,
  written: WrittenItem,
  plant: QuizPlant | null,
): WrittenMade {
  const { evidence, options, right, why, tells, question, caution } = written;
  let proved: ProvedEvidence | null = null;
  if (evidence !== undefined && plant !== null) {
    const proof = proveWritten(plant, evidence);
    if (!proof.ok) return proof;
    proved = proof.value;
  }
  const { place: _, ...card } = cardOfWritten(file.id, written);
  const order = shownOrder(card.id, options.length);
  return {
    ok: true,
    item: {
      ...card,
      answer: 'choice',
      stem: {
        tells: tells === undefined ? [] : [asWritten(tells)],
        asks: asWritten(question),
        readings: proved?.readings ?? [],
        shows: { chart: proved !== null, trends: [] },
      },
      run: proved?.seeded.run ?? null,
      caution: caution === undefined ? null : asWritten(caution),
      options: order.map(optionAt),
      key: order.indexOf(right),
    },
  };

  function optionAt(place: number): Option {
    const decidedBy = proved?.decidedBy[place] ?? null;
    return {
      says: asWritten(options[place] ?? ''),
      why: [asWritten(why?.[place] ?? '')],
      share: proved?.shares[place] ?? null,
      decidedBy,
      atS: decidedBy === null ? null : (proved?.seeded.momentsS[decidedBy.moment] ?? null),
    };
  }
}

function asWritten(text: string): Statement {
  return { code: 'quiz.as-written', with: { text } };
}
