import { checkChoice } from './choice-checks.ts';
import { checkFault } from './fault-checks.ts';
import type { Issue } from './issue.ts';
import { issueAt } from './issue-at.ts';
import { nearest } from './nearest.ts';
import { phrase } from './phrase.ts';
import type { Path } from './place.ts';
import type { QuizFile, WrittenItem } from './quiz-schema.ts';
import type { Source } from './read-source.ts';
import type { Loaded } from './read-yaml.ts';
import type { Surroundings } from './start-checks.ts';

/** Of written items: ids once, one right answer each, plants and faults that are there. */
export function checkQuiz(
  { value: quiz, source }: Loaded<QuizFile>,
  around: Surroundings,
): Issue[] {
  return quiz.items.flatMap((item, i) => {
    const path: Path = ['items', i];
    const first = quiz.items.findIndex(({ id }) => id === item.id);
    const taken = phrase('expected.another-id', { file: source.file });
    return [
      ...(first === i ? [] : [issueAt(source, [...path, 'id'], 'duplicate-id', taken)]),
      ...checkChoice(item, item.options, source, path),
      ...checkItemPlant(item, source, path, around),
      ...checkEvidence(item, source, path, around),
    ];
  });
}

function checkItemPlant(
  { plant, evidence }: WrittenItem,
  source: Source,
  path: Path,
  around: Surroundings,
): Issue[] {
  const at = [...path, 'plant'];
  if (plant === undefined) {
    const expected = phrase('expected.plant-of-evidence');
    return evidence === undefined ? [] : [issueAt(source, at, 'missing-key', expected)];
  }
  if (around.plantIds.includes(plant)) return [];
  const expected = phrase('expected.one-of', { words: around.plantIds });
  return [issueAt(source, at, 'unknown-name', expected, nearest(plant, around.plantIds))];
}

function checkEvidence(
  { plant: plantId, evidence, options, right }: WrittenItem,
  source: Source,
  path: Path,
  around: Surroundings,
): Issue[] {
  if (evidence === undefined) return [];
  const plant = plantId === undefined ? null : around.plant(plantId);
  const at = (...keys: Path): Path => [...path, 'evidence', ...keys];
  const { fault, severity, causes } = evidence;
  const places = { fault: at('fault'), severity: at('severity') };
  const issues = checkFault(fault, severity, source, places, plant, around.faults);
  causes.forEach((cause, i) => {
    const where = { fault: at('causes', i), severity: null };
    issues.push(...checkFault(cause, null, source, where, plant, around.faults));
  });
  if (causes.length !== options.length) {
    const expected = phrase('expected.cause-each', { count: options.length });
    issues.push(issueAt(source, at('causes'), 'wrong-length', expected));
  } else if (right < causes.length && causes[right] !== fault) {
    const expected = phrase('expected.right-is-fault', { fault });
    issues.push(issueAt(source, at('causes', right), 'inconsistent', expected));
  }
  return issues;
}
