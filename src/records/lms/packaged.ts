/** What a package for a learning system holds beside the page: which exercise, and how it counts. */
import { z } from 'zod';
import { QUIZ_MODES } from '../../quiz/taking/index.ts';
import { itemName } from '../answers/index.ts';
import { idOfName } from '../name-id.ts';
import { XAPI_VERSIONS } from '../xapi/statement.ts';

export const PACKAGE_FORMS = ['scorm12', 'cmi5'] as const;
export type PackageForm = (typeof PACKAGE_FORMS)[number];

/** In the package, beside the page. */
export const PACKAGED_FILE = 'exercise.json';
/** More is a book, and no learning system keeps where one is in it. */
export const MOST_PACKAGED_ITEMS = 50;

const name = z.string().min(1).max(200);

const exerciseSchema = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.enum(['job', 'drill', 'lesson']), id: name }),
  z.strictObject({
    kind: z.literal('quiz'),
    mode: z.enum(QUIZ_MODES),
    items: z
      .array(itemName)
      .min(1)
      .max(MOST_PACKAGED_ITEMS)
      .refine((items) => new Set(items).size === items.length, { message: 'an item twice' }),
  }),
]);
export type PackagedExercise = z.infer<typeof exerciseSchema>;

export const packagedSchema = z.strictObject({
  file: z.literal('flamewright package'),
  v: z.literal(1),
  /** The same exercise, counted alike, has the same id: a package put in anew goes on with the old one's work. */
  id: z.uuid(),
  form: z.enum(PACKAGE_FORMS),
  title: name,
  exercise: exerciseSchema,
  /** Share of the score from which it is passed; null: only done or not. The learning system may say otherwise. */
  mastery: z.number().min(0).max(1).nullable(),
  /** Edition of the Experience API that the learning system speaks; of no use to SCORM. */
  xapi: z.enum(XAPI_VERSIONS),
});
export type Packaged = z.infer<typeof packagedSchema>;

export type PackageWish = Pick<Packaged, 'form' | 'title' | 'exercise' | 'mastery' | 'xapi'>;

/** @throws where the wish holds what no package may, such as no questions */
export function packagedOf(wish: PackageWish): Packaged {
  const { exercise, mastery } = wish;
  const id = idOfName(`${PACKAGES}/${JSON.stringify([exercise, mastery])}`);
  return packagedSchema.parse({ file: 'flamewright package', v: 1, id, ...wish });
}

export type PackagedRead =
  | { readonly ok: true; readonly packaged: Packaged }
  /** `where` in the file, as in `exercise.items.3`; empty where it is the whole. */
  | { readonly ok: false; readonly where: string };

/** Reads the file of a package, whatever became of it since. */
export function readPackaged(text: string): PackagedRead {
  let data: unknown;
  try {
    data = JSON.parse(text);
  } catch {
    return { ok: false, where: '' };
  }
  const read = packagedSchema.safeParse(data);
  if (read.success) return { ok: true, packaged: read.data };
  return { ok: false, where: read.error.issues[0]?.path.map(String).join('.') ?? '' };
}

/** Under which packages and what is in them are named. */
export const PACKAGES = 'https://flamewright.example/xapi/packages';
