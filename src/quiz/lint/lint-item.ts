import { displayOf } from '../../quantity/index.ts';
import type { Item, NumberItem, Option, OrderItem } from '../item/item.ts';
import { readItemId } from '../item/item-id.ts';
import { farthestOff } from '../item/response.ts';
import type { LintFinding, LintRule } from './finding.ts';
import { kindOfStatement, type PartOf, sameMeaning } from './same-meaning.ts';

export interface LintOptions {
  /** Which part a fault is mended at: two causes at one part are one answer. */
  readonly partOf?: PartOf;
  /** For items that ask for another number of options than the rule. */
  readonly options?: Count;
}
type Count = readonly [fewest: number, most: number];

const THREE: Count = [3, 3];
const ON_DRAWING: Count = [4, 8];
const STEPS: Count = [4, 6];
/** An author may have reason for other than three. */
const WRITTEN: Count = [2, 5];
const WRITTEN_HEAD = 'written/';

const SURE = 0.9;
const RULED_OUT = 0.05;
const TOLERANCES: Count = [0.001, 0.1];
const FEWEST_LINES = 2;
const DIFFICULTIES: Count = [-4, 4];

/** What is wrong with an item, by its structure alone; nothing where it is sound. */
export function lintItem(item: Item, options: LintOptions = {}): readonly LintFinding[] {
  const found = headFindings(item);
  switch (item.answer) {
    case 'choice':
    case 'spot':
      return [...found, ...choiceFindings(item, options)];
    case 'order':
      return [...found, ...orderFindings(item, options)];
    case 'number':
      return [...found, ...numberFindings(item)];
  }
}

function headFindings(item: Item): LintFinding[] {
  const { id, kind, plant, topic, skills, difficulty } = item;
  const made = readItemId(id);
  const named = made !== null && made.kind === kind && made.plant === plant;
  const written = id.startsWith(WRITTEN_HEAD) && id.length > WRITTEN_HEAD.length;
  return [
    ...where('id', 'id', !named && !written),
    ...where('topic and skills', 'topic', topic.trim() === ''),
    ...where('topic and skills', 'skills', skills.length === 0),
    ...where('difficulty', 'difficulty', !isWithin(difficulty, DIFFICULTIES)),
  ];
}

function choiceFindings(
  item: Extract<Item, { options: unknown }>,
  { options: stated, partOf = (fault) => fault }: LintOptions,
): LintFinding[] {
  const { options, key, answer, id } = item;
  const count =
    stated ?? (answer === 'spot' ? ON_DRAWING : id.startsWith(WRITTEN_HEAD) ? WRITTEN : THREE);
  const isKey = Number.isInteger(key) && key >= 0 && key < options.length;
  const spots = options.map((option) => ('spot' in option ? option.spot : null));
  return [
    ...where('one key', 'key', !isKey),
    ...where('number of options', 'options', !isWithin(options.length, count)),
    ...setFindings('options', options, partOf),
    ...spots.flatMap((spot, place) =>
      where('same meaning', `options.${place}`, spot !== null && spots.indexOf(spot) < place),
    ),
    // Without a key nobody knows which of them has to be sure.
    ...(isKey
      ? options.flatMap((option, place) => shareFindings(option, place, place === key))
      : []),
  ];
}

/** Things of the drawing are of one kind, each under its own code. */
function kindOfOption(option: Option): string {
  return 'spot' in option ? '' : kindOfStatement(option.says);
}

function orderFindings(
  { steps, key }: OrderItem,
  { options: stated, partOf = (fault) => fault }: LintOptions,
): LintFinding[] {
  const isWhole =
    key.length === steps.length &&
    steps.every((_, place) => key.filter((one) => one === place).length === 1);
  return [
    ...where('order not whole', 'key', !isWhole),
    ...where('number of options', 'steps', !isWithin(steps.length, stated ?? STEPS)),
    ...setFindings('steps', steps, partOf),
  ];
}

function numberFindings(item: NumberItem): LintFinding[] {
  const { key, tolerance, of, working, mistakes = [] } = item;
  const reach = farthestOff(item);
  return [
    ...where('one key', 'key', !Number.isFinite(key)),
    ...where('tolerance', 'tolerance', !isWithin(tolerance, TOLERANCES)),
    // A count has no unit; anything else that is measured has.
    ...where('unit', 'of', displayOf(of, 'SI').symbol === '' && of !== 'number'),
    ...where('working', 'working', working.length < FEWEST_LINES),
    ...mistakes.flatMap(({ value }, place) =>
      where(
        'mistake counts as right',
        `mistakes.${place}`,
        Number.isFinite(key) && Math.abs(value - key) <= reach,
      ),
    ),
  ];
}

/** Of all options together: none like another, all of one kind, each with its reasons. */
function setFindings(name: string, options: readonly Option[], partOf: PartOf): LintFinding[] {
  const [first] = options;
  const kind = first === undefined ? '' : kindOfOption(first);
  return options.flatMap((option, place) => [
    ...where('alike in kind', `${name}.${place}`, kindOfOption(option) !== kind),
    ...where(
      'same meaning',
      `${name}.${place}`,
      options.slice(0, place).some((other) => sameMeaning(option.says, other.says, partOf)),
    ),
    ...where('reasons', `${name}.${place}.why`, option.why.length === 0),
  ]);
}

function shareFindings({ share, decidedBy }: Option, place: number, isKey: boolean): LintFinding[] {
  if (share === null) return [];
  if (isKey) return where('key not sure', `options.${place}.share`, !(share >= SURE));
  return [
    ...where('distractor not ruled out', `options.${place}.share`, !(share <= RULED_OUT)),
    ...where('no deciding reading', `options.${place}.decidedBy`, decidedBy === null),
  ];
}

function where(rule: LintRule, place: string, isWrong: boolean): LintFinding[] {
  return isWrong ? [{ rule, where: place }] : [];
}

function isWithin(value: number, [fewest, most]: Count): boolean {
  return value >= fewest && value <= most;
}
