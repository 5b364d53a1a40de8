import type { PlantFile } from '../../engine/index.ts';
import type { Message } from '../message.ts';
import { testPointsOf } from './test-points.ts';
import type { TestPoint, Tool, ToolIssue, ToolUse } from './tool-types.ts';
import { rangeOf, toolCode, toolOf } from './tools.ts';

/** Why this tool does not connect like that on this plant, and the mend; null when it does. */
export function checkUse(plant: PlantFile, use: ToolUse): ToolIssue | null {
  const { place } = use;
  const tool = toolOf(use.tool);
  if (tool === null) {
    return issue('unknown-tool', place, 'unknown-tool', { tool: use.tool }, 'unknown-tool');
  }
  const range = rangeOf(use);
  if (range !== '' && !tool.ranges.some(({ id }) => id === range)) {
    return {
      code: 'unknown-range',
      place,
      found: { code: 'bench.issue.unknown-range', params: { range } },
      mend: { code: 'bench.mend.ranges', params: { ranges: tool.ranges.map(({ id }) => id) } },
    };
  }
  const points = testPointsOf(plant);
  return findPlaceIssue(points, tool, place, range) ?? findOtherIssue(points, tool, use, range);
}

function findPlaceIssue(
  points: readonly TestPoint[],
  tool: Tool,
  place: string,
  range: string,
): ToolIssue | null {
  const point = points.find(({ id, tools }) => id === place && tools.includes(tool.id));
  const known = point ?? points.find(({ id }) => id === place);
  const mend: Message = { code: `${toolCode(tool.id)}.mend` };
  if (known === undefined) {
    return {
      code: 'unknown-place',
      place,
      found: { code: 'bench.issue.unknown-place', params: { place } },
      mend,
    };
  }
  if (point === undefined) {
    return {
      code: 'wrong-place',
      place,
      found: {
        code: 'bench.issue.wrong-place',
        params: { tool: tool.name, place: known.label },
      },
      mend,
    };
  }
  if (tool.id === 'multimeter') return findMeterIssue(point, range);
  if (tool.id === 'thermometer' && place === 'casing' && range === 'pocket') {
    return issue('wrong-place', place, 'no-pocket', {}, 'use-surface');
  }
  return null;
}

/** A clamp needs a single conductor; the leads need metal that can be reached. */
function findMeterIssue({ id, where }: TestPoint, range: string): ToolIssue | null {
  const clamp = range === 'amps';
  if (clamp && 'wire' in where && !('terminal' in where)) {
    return issue('wrong-place', id, 'clamp-on-wire', { wire: id }, 'clamp-at-terminal');
  }
  if (!clamp && 'item' in where) {
    return issue('wrong-place', id, 'leads-on-lead', {}, 'use-clamp');
  }
  return null;
}

function findOtherIssue(
  points: readonly TestPoint[],
  tool: Tool,
  use: ToolUse,
  range: string,
): ToolIssue | null {
  const { place } = use;
  const other = use.other ?? '';
  const twoLeads = tool.id === 'multimeter' && range !== 'amps';
  if (other === '') {
    return twoLeads ? issue('other-place', place, 'one-lead', {}, 'second-lead') : null;
  }
  if (tool.other === 'never' || (tool.id === 'multimeter' && !twoLeads)) {
    return issue('other-place', other, 'one-place-only', { tool: tool.name }, 'leave-other');
  }
  if (other === place) return issue('other-place', other, 'same-place', {}, 'two-places');
  return findPlaceIssue(points, tool, other, range);
}

function issue(
  code: ToolIssue['code'],
  place: string,
  found: string,
  params: Readonly<Record<string, string | Message>>,
  mend: string,
): ToolIssue {
  return {
    code,
    place,
    found: { code: `bench.issue.${found}`, params },
    mend: { code: `bench.mend.${mend}` },
  };
}
