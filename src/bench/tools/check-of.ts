import { TOOL_IDS } from '../../../machines/job/index.ts';
import type { Action } from '../../engine/index.ts';
import type { ToolUse } from './tool-types.ts';
import { rangeOf } from './tools.ts';

type CheckAction = Extract<Action, { type: 'check' }>;

const RANGE_MARK = ': ';

/** A tool connected, as the action log counts it: the tool with its range, and its places. */
export function checkOf(use: ToolUse): CheckAction {
  const range = rangeOf(use);
  return {
    type: 'check',
    what: range === '' ? use.tool : `${use.tool}${RANGE_MARK}${range}`,
    place: use.place,
    other: use.other ?? '',
  };
}

/** The use that a check of the log tells of; null where it is a look or anything but a tool. */
export function toolUseOf(check: {
  readonly what: string;
  readonly place: string;
  readonly other: string;
}): ToolUse | null {
  const [name, range] = check.what.split(RANGE_MARK);
  const tool = TOOL_IDS.find((id) => id === name);
  if (tool === undefined) return null;
  return {
    tool,
    place: check.place,
    ...(check.other !== '' && { other: check.other }),
    ...(range !== undefined && { range }),
  };
}
