import type { AuthorKind } from '../author-kinds.ts';

export const SECTION_NAMES = [
  'what',
  'texts',
  'call',
  'people',
  'sheet',
  'bag',
  'question',
  'before',
  'wrong',
  'happens',
  'steps',
  'items',
  'after',
  'expect',
] as const;
export type SectionName = (typeof SECTION_NAMES)[number];

export interface FormSection {
  readonly name: SectionName;
  readonly keys: readonly string[];
}

const BEFORE: FormSection = { name: 'before', keys: ['initial', 'load', 'seed'] };
const EXPECT: FormSection = { name: 'expect', keys: ['expect'] };

/** The keys of a file in the order in which a person thinks of them; each key of its schema once. */
export const FORM_SECTIONS: Readonly<Record<AuthorKind, readonly FormSection[]>> = {
  start: [
    { name: 'what', keys: ['title', 'id', 'plant', 'profile'] },
    { name: 'wrong', keys: ['faults'] },
    { name: 'texts', keys: ['summary', 'teaches', 'caution'] },
    BEFORE,
    { name: 'happens', keys: ['actions', 'until', 'allow'] },
    EXPECT,
  ],
  job: [
    { name: 'what', keys: ['title', 'id', 'plant', 'profile', 'level', 'skills'] },
    { name: 'wrong', keys: ['faults', 'cause', 'accept', 'userError'] },
    { name: 'call', keys: ['site', 'card'] },
    { name: 'people', keys: ['people'] },
    { name: 'sheet', keys: ['sheet'] },
    { name: 'bag', keys: ['tools', 'budgetMinutes'] },
    BEFORE,
    { name: 'happens', keys: ['actions', 'arriveAt'] },
    { name: 'after', keys: ['caution', 'debrief'] },
    EXPECT,
  ],
  lesson: [
    { name: 'what', keys: ['title', 'id', 'plant', 'profile'] },
    { name: 'texts', keys: ['intro', 'outro', 'caution'] },
    { name: 'steps', keys: ['steps'] },
    { name: 'wrong', keys: ['faults'] },
    BEFORE,
    { name: 'happens', keys: ['actions', 'until'] },
  ],
  drill: [
    { name: 'what', keys: ['title', 'id', 'plant', 'profile', 'skill'] },
    { name: 'wrong', keys: ['faults'] },
    { name: 'question', keys: ['question', 'options', 'right', 'why', 'claim', 'limitS', 'tools'] },
    BEFORE,
    { name: 'happens', keys: ['actions', 'arriveAt'] },
    { name: 'after', keys: ['caution', 'debrief'] },
    EXPECT,
  ],
  quiz: [
    { name: 'what', keys: ['title', 'id'] },
    { name: 'items', keys: ['items'] },
  ],
};
