import type { PlantFile } from '../engine/index.ts';
import { type FieldIssue, findFieldIssues, findWiringIssues } from '../field/index.ts';
import { checkGasTrain, type GasTrainIssue } from '../plant/gas/index.ts';
import { checkFit } from './fit-checks.ts';
import type { Issue, IssueCode } from './issue.ts';
import { issueAt } from './issue-at.ts';
import { nearest } from './nearest.ts';
import { phrase } from './phrase.ts';
import type { Path } from './place.ts';
import type { Loaded } from './read-yaml.ts';
import { checkVariant } from './variant-checks.ts';
import { checkVessel } from './vessel-checks.ts';

/** What makes no plant although every number of it is sane: names that lead nowhere, parts that do not fit. */
export function checkPlant({ value: plant, source }: Loaded<PlantFile>): Issue[] {
  return [
    ...checkGasTrain(plant.gasTrain).map((issue) => {
      const { path, code, expected, suggestion } = explainGasIssue(issue, plant);
      return issueAt(source, path, code, expected, suggestion);
    }),
    ...checkEnds(plant).map(([path, code]) => issueAt(source, path, 'inconsistent', phrase(code))),
    ...findFieldIssues(plant).map(({ code, path }) =>
      issueAt(
        source,
        path,
        FIELD_CODES[code] ?? 'inconsistent',
        phrase(`expected.plant.${slugOf(code)}`),
      ),
    ),
    ...checkVessel(plant).map(([path, code]) =>
      issueAt(source, path, 'inconsistent', phrase(`expected.vessel.${code}`)),
    ),
    ...checkFit(plant).map(([path, code]) =>
      issueAt(source, path, 'inconsistent', phrase(`expected.fit.${code}`)),
    ),
    ...findWiringIssues(plant).map(({ code, path, name, known }) =>
      issueAt(
        source,
        path,
        code.startsWith('unknown') ? 'unknown-name' : 'inconsistent',
        phrase(`expected.wiring.${slugOf(code)}`, { name }),
        nearest(name, known),
      ),
    ),
    ...checkVariant(plant).map(([path, code]) =>
      issueAt(source, path, 'inconsistent', phrase(`expected.variant.${code}`)),
    ),
  ];
}

const FIELD_CODES: Partial<Record<FieldIssue['code'], IssueCode>> = {
  'duplicate id': 'duplicate-id',
  'unknown sensor': 'unknown-name',
  'unknown probe': 'unknown-name',
};

interface Explained {
  readonly path: Path;
  readonly code: IssueCode;
  readonly expected: ReturnType<typeof phrase>;
  readonly suggestion: string | null;
}

function explainGasIssue(issue: GasTrainIssue, plant: PlantFile): Explained {
  const { nodes, edges } = plant.gasTrain;
  const node = nodes.map(({ id }) => id).lastIndexOf(issue.id);
  const edge = edges.map(({ id }) => id).lastIndexOf(issue.id);
  const at: Path = edge >= 0 ? ['gasTrain', 'edges', edge] : ['gasTrain', 'nodes', node];
  const expected = phrase(`expected.gas.${issue.code}`);
  switch (issue.code) {
    case 'unknown-point': {
      const points = ['supply', ...nodes.map(({ id }) => id), 'furnace', 'atmosphere'];
      const end = edges[edge]?.from === issue.found ? 'from' : 'to';
      return {
        path: [...at, end],
        code: 'unknown-name',
        expected: phrase('expected.gas.unknown-point', { known: points }),
        suggestion: nearest(issue.found, points),
      };
    }
    case 'repeated-name':
    case 'reserved-name':
      return { path: [...at, 'id'], code: 'duplicate-id', expected, suggestion: null };
    case 'edge-to-itself':
    case 'two-boundaries':
    case 'loop':
      return { path: [...at, 'to'], code: 'inconsistent', expected, suggestion: null };
    case 'curve':
      return { path: [...at, 'bladeDeg'], code: 'inconsistent', expected, suggestion: null };
    case 'empty-mixture':
      return { path: ['gasTrain', 'mixture'], code: 'inconsistent', expected, suggestion: null };
  }
}

/** Gas must find a way from the supply to the furnace, and every point must hang on something. */
function checkEnds({ gasTrain }: PlantFile): [Path, string][] {
  const reached = new Set(['supply']);
  for (let before = -1; before !== reached.size; ) {
    before = reached.size;
    for (const { from, to } of gasTrain.edges) {
      if (reached.has(from)) reached.add(to);
      if (reached.has(to) && to !== 'furnace' && to !== 'atmosphere') reached.add(from);
    }
  }
  const loose = gasTrain.nodes.flatMap(({ id }, i): [Path, string][] =>
    reached.has(id) ? [] : [[['gasTrain', 'nodes', i, 'id'], 'expected.gas.connected']],
  );
  return reached.has('furnace')
    ? loose
    : [...loose, [['gasTrain', 'edges'], 'expected.gas.reaches-furnace']];
}

function slugOf(words: string): string {
  return words.replaceAll(' ', '-');
}
