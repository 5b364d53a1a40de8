/** What the learning system has laid ready for a session of cmi5. */
import { z } from 'zod';

export const LAUNCH_DATA = 'LMS.LaunchData';
export const PREFERENCES = 'cmi5LearnerPreferences';

const launchDataSchema = z.object({
  contextTemplate: z.record(z.string(), z.unknown()).default({}),
  launchMode: z.enum(['Normal', 'Browse', 'Review']),
  masteryScore: z.number().min(0).max(1).nullish(),
  moveOn: z.string().optional(),
  // Only where a browser goes; an address that runs text would run it in this page.
  returnURL: z.url({ protocol: /^https?$/ }).optional(),
});
export type LaunchData = z.infer<typeof launchDataSchema>;

/** Null where it is not what cmi5 says. */
export function readLaunchData(text: string): LaunchData | null {
  const read = launchDataSchema.safeParse(parsed(text));
  return read.success ? read.data : null;
}

const preferencesSchema = z.object({ audioPreference: z.enum(['on', 'off']) });

/** Null where the learner has said nothing of it. */
export function readSoundWanted(text: string): boolean | null {
  const read = preferencesSchema.safeParse(parsed(text));
  return read.success ? read.data.audioPreference === 'on' : null;
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return null;
  }
}
