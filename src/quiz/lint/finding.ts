/** What is wrong with how an item is written; its sentence stands in the catalogue as `quiz.lint.…`. */
export const LINT_RULES = [
  'id',
  'topic and skills',
  'difficulty',
  'one key',
  'number of options',
  'alike in kind',
  'same meaning',
  'reasons',
  'key not sure',
  'distractor not ruled out',
  'no deciding reading',
  'tolerance',
  'unit',
  'working',
  'mistake counts as right',
  'order not whole',
  'negative question',
  'all or none of the above',
  'one question',
  'option repeated',
  'alike in length',
  'reason says nothing',
  'gap in the words',
  'key places uneven',
] as const;
export type LintRule = (typeof LINT_RULES)[number];

export interface LintFinding {
  readonly rule: LintRule;
  /** Path within the item, as in `options.1.why`. */
  readonly where: string;
}
