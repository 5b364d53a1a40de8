/** What the page and the worker that knows plants and files say to each other. */
import { z } from 'zod';
import type { CaseDiagnosed } from '../../diagnosis/index.ts';
import type { Issue, LearnerScenario, Phrase } from '../../scenario/index.ts';
import type { Names } from '../../wording/index.ts';
import { AUTHOR_KINDS, type AuthorKind } from './author-kinds.ts';
import type { FileSchema } from './file-schema.ts';

const MAX_TEXT = 2_000_000;
const file = {
  kind: z.enum(AUTHOR_KINDS),
  /** However wrong, it is for the loader to say so. */
  text: z.string().max(MAX_TEXT),
};

export const toAuthorSchema = z.strictObject({
  type: z.literal('author'),
  ask: z.number().int().min(0),
  what: z.discriminatedUnion('of', [
    z.strictObject({ of: z.literal('facts') }),
    z.strictObject({ of: z.literal('check'), ...file }),
    z.strictObject({
      of: z.literal('diagnose'),
      ...file,
      /** Address of the folder of the atlases. */
      atlases: z.string().max(2000),
    }),
  ]),
});
export type ToAuthor = z.infer<typeof toAuthorSchema>;
export type AuthorQuestion = ToAuthor['what'];

export interface AuthorFault {
  readonly id: string;
  readonly family: string;
  readonly component: string;
  readonly mechanism: string;
  readonly means: string;
  readonly unit: string;
  readonly low: number;
  readonly high: number;
  readonly typical: number;
  readonly onsets: readonly string[];
}

export interface AuthorPlant {
  readonly id: string;
  readonly title: string;
  readonly isHotWater: boolean;
  readonly faults: readonly AuthorFault[];
  readonly parts: readonly { readonly part: string; readonly ways: readonly string[] }[];
  readonly settings: readonly {
    readonly part: string;
    readonly setting: string;
    readonly unit: string;
    readonly min: number;
    readonly max: number;
  }[];
  readonly cocks: readonly string[];
  readonly servos: readonly string[];
  /** In the order in which a start reaches them. */
  readonly steps: readonly string[];
  /** The shipped start with nothing wrong: what a new file begins with. */
  readonly sound: Pick<LearnerScenario, 'initial' | 'actions' | 'until'> | null;
}

/** What the form needs to know; asked for once. */
export interface AuthorFacts {
  readonly schemas: Readonly<Record<AuthorKind, FileSchema>>;
  readonly plants: readonly AuthorPlant[];
  readonly profiles: readonly { readonly id: string; readonly title: string }[];
}

/** An issue without its file, its sentence as a phrase. */
export type AuthorIssue = Pick<Issue, 'line' | 'column' | 'path'> & { readonly says: Phrase };

export interface FileChecked {
  readonly issues: readonly AuthorIssue[];
  /** The file as a start to be run on its own; null where it is not in order, or runs nothing. */
  readonly start: LearnerScenario | null;
  /** Whether there is something to be found out. */
  readonly isCase: boolean;
}

export const DIAGNOSIS_TROUBLES = [
  'no atlas',
  'atlas not loaded',
  'not in order',
  'not in atlas',
] as const;
export type DiagnosisTrouble = (typeof DIAGNOSIS_TROUBLES)[number];

export type FileDiagnosed =
  | {
      readonly ok: true;
      readonly found: CaseDiagnosed;
      readonly causes: number;
      readonly comesAndGoes: boolean;
      /** As its writer has it; null where the kind has none. */
      readonly level: number | null;
      readonly names: Names;
    }
  | { readonly ok: false; readonly trouble: DiagnosisTrouble; readonly detail: string };

export interface AuthorAnswers {
  readonly facts: AuthorFacts;
  readonly check: FileChecked;
  readonly diagnose: FileDiagnosed;
}

/** Made by the same build as the page; only that it is an answer, and to what, is looked at. */
export const fromAuthorSchema = z.object({
  type: z.literal('authored'),
  ask: z.number().int(),
  answer: z.unknown(),
  /** Why there is no answer; null where there is one. */
  trouble: z.string().nullable(),
});
export type FromAuthor = z.infer<typeof fromAuthorSchema>;
