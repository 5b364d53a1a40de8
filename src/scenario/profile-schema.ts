import { z } from 'zod';
import { timingParameters } from '../../machines/burner/index.ts';
import { schemaFromTable } from './schema-from-table.ts';
import { idSchema, paragraphSchema, titleSchema } from './text-schemas.ts';

const note = paragraphSchema('where such a value comes from, and how certain that is');
const notes = z.strictObject(
  Object.fromEntries(Object.keys(timingParameters).map((timing) => [timing, note.optional()])),
);

/** A practice profile: the timings and limits of one region's style of practice, as training values. */
export const profileSchema = z
  .strictObject({
    id: idSchema('the name of the profile'),
    title: titleSchema('what a list shows'),
    description: paragraphSchema('whose practice it is in the style of, and for what'),
    timings: schemaFromTable(timingParameters),
    notes: notes.default({}),
  })
  .meta({ title: 'Flamewright practice profile' });
