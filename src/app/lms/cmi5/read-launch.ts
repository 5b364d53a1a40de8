/** How cmi5 says where and for whom a unit is opened: in the address of the page. */
import { z } from 'zod';
import type { Cmi5Launch } from '../../../records/lms/index.ts';

export interface LaunchAddress extends Cmi5Launch {
  /** Of the record store, with a slash at its end. */
  readonly endpoint: string;
  /** Where the pass for this session is fetched, once. */
  readonly fetchAddress: string;
}

const web = z.url({ protocol: /^https?$/ });
const launchSchema = z.object({
  endpoint: web,
  fetch: web,
  actor: z
    .string()
    .transform((text, context) => {
      try {
        return JSON.parse(text) as unknown;
      } catch {
        context.addIssue({ code: 'custom', message: 'not JSON' });
        return z.NEVER;
      }
    })
    .pipe(z.record(z.string(), z.unknown())),
  registration: z.uuid(),
  activityId: z.string().min(1).max(2000),
});

/** Null where the address does not say all of it: then no learning system of this kind opened the page. */
export function readLaunch(query: string): LaunchAddress | null {
  const read = launchSchema.safeParse(Object.fromEntries(new URLSearchParams(query)));
  if (!read.success) return null;
  const { endpoint, fetch: fetchAddress, ...launch } = read.data;
  return { ...launch, endpoint: endpoint.endsWith('/') ? endpoint : `${endpoint}/`, fetchAddress };
}
