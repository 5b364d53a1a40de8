/** The list of files that the build makes beside the page. */
import { z } from 'zod';

export const BUILT_FILES = 'files.json';
const MOST_FILES = 5000;

const listSchema = z.object({
  v: z.literal(1),
  files: z
    .array(
      z
        .string()
        .min(1)
        .max(300)
        // Nothing above the page, and nothing elsewhere.
        .regex(/^[\w@~+-][\w@~+ .-]*(?:\/[\w@~+-][\w@~+ .-]*)*$/),
    )
    .max(MOST_FILES),
});

/** @throws where the text is no such list */
export function readBuiltFiles(text: string): readonly string[] {
  return listSchema.parse(JSON.parse(text)).files;
}
