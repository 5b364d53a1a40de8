/** One piece of work as the device keeps it: with the exercise it is all that brings it back. */
import { z } from 'zod';
import type { Action, TimedAction } from '../../engine/index.ts';
import { deskSchema } from '../../judging/desk/index.ts';
import { toolUseSchema, WORK_KINDS, type WorkKind } from '../session/work-protocol.ts';

export const WORK_VERSION = 1;

/** More than these of one exercise nobody keeps apart, and the device has other things to keep. */
export const MOST_BRANCHES = 3;

const word = z.string().max(200);
const timeS = z.number().min(0);

/** Checked only as far as the page needs it; the worker checks each action by the engine's tables. */
const action = z.looseObject({ type: word });
const logSchema = z.array(action.extend({ t: timeS })) as unknown as z.ZodType<
  readonly TimedAction[]
>;
const pendingSchema = z.array(action) as unknown as z.ZodType<readonly Action[]>;

/** What a class did to work at a seat of it; saved with the work, so that nothing is done twice. */
const ofClassSchema = z.strictObject({
  /** Number of the last entry of the class that is in it. */
  applied: z.number().int().min(0),
  /** Acts that the class ordered, in the order in which they were done. */
  ordered: z
    .array(
      z.strictObject({
        /** The entry it comes from. */
        n: z.number().int().min(1),
        /** Which of the entry's acts. */
        act: z.number().int().min(0),
        /** Where the run stood when it was ordered, s; the log has it then or a little later. */
        atS: timeS,
      }),
    )
    .max(10_000),
});
export type OfClass = z.infer<typeof ofClassSchema>;

export const workRecordSchema = z.strictObject({
  v: z.literal(WORK_VERSION),
  kind: z.enum(WORK_KINDS),
  id: word,
  seed: z.number(),
  startedISO: z.iso.datetime(),
  savedISO: z.iso.datetime(),
  log: logSchema,
  /** Done, but not yet in the log when it was saved. */
  pending: pendingSchema,
  desk: deskSchema,
  headS: timeS,
  /** Of the run at `headS`; null where something was pending. */
  hash: word.nullable(),
  /** Of the setup that the log belongs to. */
  setupHash: word,
  /** The tools that were connected. */
  uses: z.array(toolUseSchema),
  /** Set where it was done at a seat of a class. */
  ofClass: ofClassSchema.optional(),
  /** Set where it is a branch: gone on with otherwise, from a moment of other work. */
  branchOf: z
    .strictObject({
      /** Which of the exercise's branches. */
      n: z.number().int().min(1).max(MOST_BRANCHES),
      /** When the work was begun that it comes from. */
      startedISO: z.iso.datetime(),
      /** The moment it leaves that work, s. */
      t: timeS,
    })
    .optional(),
});
export type WorkRecord = z.infer<typeof workRecordSchema>;
export type BranchOf = NonNullable<WorkRecord['branchOf']>;

export interface WorkName {
  readonly kind: WorkKind;
  readonly id: string;
  /** Which branch of the work; the work itself where it is left out. */
  readonly branch?: number | undefined;
}

export function nameOfWork({ kind, id, branchOf }: WorkRecord): WorkName {
  return branchOf === undefined ? { kind, id } : { kind, id, branch: branchOf.n };
}

export const WORK_TROUBLES = [
  /** What was kept cannot be read; it stands aside, untouched. */
  'broken',
  /** Kept by a newer version of the page; left as it is. */
  'newer version',
  /** The exercise is another one since an update; what was done stands aside. */
  'exercise changed',
  /** The device has no room left: what was done since is not saved. */
  'no room',
  /** The browser keeps nothing for this page. */
  'storage refused',
  /** Another page of this device has gone on with it: what is done here is not saved. */
  'open elsewhere',
  /** A file that is no saved work. */
  'not saved work',
] as const;
export type WorkTrouble = (typeof WORK_TROUBLES)[number];
/** What went wrong with saved work, and with which; its sentence is `work.trouble.…`. */
export interface WorkIssue {
  readonly trouble: WorkTrouble;
  readonly name: WorkName | null;
  /** Where in it, or what the browser said; for who wants to know. */
  readonly detail: string;
}

export type WorkRead =
  | { readonly ok: true; readonly record: WorkRecord }
  | {
      readonly ok: false;
      readonly trouble: Extract<WorkTrouble, 'broken' | 'newer version'>;
      readonly detail: string;
    };

/** Reads what was kept, whatever it is. */
export function readWork(text: string): WorkRead {
  let data: unknown;
  try {
    data = JSON.parse(text);
  } catch (error) {
    return broken(error instanceof Error ? error.message : String(error));
  }
  return readWorkData(data);
}

export function readWorkData(data: unknown): WorkRead {
  const version = versionOf(data);
  if (version !== null && version > WORK_VERSION) {
    return { ok: false, trouble: 'newer version', detail: `version ${version}` };
  }
  const parsed = workRecordSchema.safeParse(data);
  if (parsed.success) return { ok: true, record: parsed.data };
  const [first] = parsed.error.issues;
  return broken(first === undefined ? '' : `${first.path.join('.')}: ${first.message}`);
}

function broken(detail: string): WorkRead {
  return { ok: false, trouble: 'broken', detail: detail.slice(0, 200) };
}

function versionOf(data: unknown): number | null {
  const v = (data as { readonly v?: unknown } | null)?.v;
  return typeof v === 'number' ? v : null;
}
