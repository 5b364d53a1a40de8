/** The list of proved items, as it is shipped beside the page. */
import { z } from 'zod';
import { SKILL_ORDER } from '../../diagnosis/mastery/index.ts';
import { ITEM_KINDS, type ItemCard } from '../../quiz/index.ts';

/** Harder than this nothing is, on the scale of ratings. */
export const MOST_DIFFICULTY = 6;
const MOST_CARDS = 20_000;

const cardSchema = z.object({
  id: z.string().min(1).max(200),
  kind: z.enum(ITEM_KINDS),
  plant: z.string().max(100),
  topic: z.string().min(1).max(200),
  skills: z.array(z.enum(SKILL_ORDER)).min(1),
  difficulty: z.number().min(-MOST_DIFFICULTY).max(MOST_DIFFICULTY),
  place: z.number().int().min(0).nullable(),
});

export const bankSchema = z.object({
  v: z.literal(1),
  items: z.array(cardSchema satisfies z.ZodType<ItemCard>).max(MOST_CARDS),
  /** Difficulties as classes have shown them. */
  moved: z
    .record(
      z.string().max(200),
      z.object({
        learners: z.number().int().min(1),
        difficulty: z.number().min(-MOST_DIFFICULTY).max(MOST_DIFFICULTY),
      }),
    )
    .default({}),
});
