import { type PlantFile, partsOf, settingsOf, type TimedAction } from '../engine/index.ts';
import type { Issue, IssueCode } from './issue.ts';
import { issueAt } from './issue-at.ts';
import { nearest } from './nearest.ts';
import { type Phrase, phrase } from './phrase.ts';
import type { Path } from './place.ts';
import { cocksOf } from './plant-parts.ts';
import type { Source } from './read-source.ts';

export type BenchKey = 'part' | 'way' | 'setting' | 'value' | 'point' | 'servo';

/** Parts, dials, locks and servos that an act names must be on the plant. */
export function checkBenchAct(
  action: TimedAction,
  plant: PlantFile,
  source: Source,
  pathOf: (key: BenchKey) => Path,
): Issue[] {
  const { id } = plant;
  const issue = (key: BenchKey, code: IssueCode, expected: Phrase, mend: string | null = null) => [
    issueAt(source, pathOf(key), code, expected, mend),
  ];
  const named = (key: BenchKey, name: string, known: readonly string[], expected: Phrase) =>
    known.includes(name) ? [] : issue(key, 'unknown-name', expected, nearest(name, known));

  switch (action.type) {
    case 'lock': {
      const known = ['isolator', ...cocksOf(plant)];
      const expected = phrase('expected.lock-point', { plant: id, known: cocksOf(plant) });
      return named('point', action.point, known, expected);
    }
    case 'stroke': {
      const known = plant.field.servos.map((servo) => servo.id);
      return named('servo', action.servo, known, phrase('expected.servo', { plant: id, known }));
    }
    case 'repair': {
      const parts = partsOf(plant);
      const part = parts.find((one) => one.part === action.part);
      if (part === undefined) {
        const known = parts.map((one) => one.part);
        return named('part', action.part, known, phrase('expected.part', { plant: id }));
      }
      const known: readonly string[] = part.ways;
      const params = { part: part.part, known };
      const expected =
        known.length === 0
          ? phrase('expected.no-way', { part: part.part })
          : phrase('expected.way', params);
      return known.includes(action.way) ? [] : issue('way', 'not-applicable', expected);
    }
    case 'adjust': {
      const dials = settingsOf(plant);
      const onPart = dials.filter(({ part }) => part === action.part);
      if (onPart.length === 0) {
        const known = [...new Set(dials.map(({ part }) => part))];
        const expected = phrase('expected.part-with-setting', { plant: id, known });
        return named('part', action.part, known, expected);
      }
      const dial = onPart.find(({ setting }) => setting === action.setting);
      if (dial === undefined) {
        const known = onPart.map(({ setting }) => setting);
        const expected = phrase('expected.setting', { part: action.part, known });
        return named('setting', action.setting, known, expected);
      }
      const { min, max, unit } = dial;
      if (action.value >= min && action.value <= max) return [];
      return issue('value', 'out-of-range', phrase('expected.setting-value', { min, max, unit }));
    }
    default:
      return [];
  }
}
