import type { PlantFile, TimedAction } from '../../engine/index.ts';
import type { Message } from '../message.ts';
import { placeLabel, pointOf, rangeOf, toolOf, toolUseOf } from '../tools/index.ts';
import { lookedAt } from './looked-at.ts';

type CheckAction = Extract<TimedAction, { type: 'check' }>;

/** Ways of finding out that need no place and have words of their own. */
const PLACELESS = new Set(['listen', 'smell', 'history', 'commissioning sheet']);

/** One line of the minutes for a tool that was connected, or a look that was taken. */
export function checkSaid(check: CheckAction, plant: PlantFile | null): Message {
  const { what, place, other } = check;
  if (PLACELESS.has(what)) return { code: `conduct.minutes.${what.replace(' ', '-')}` };
  const use = toolUseOf(check);
  const tool = use === null ? null : toolOf(use.tool);
  if (use === null || tool === null) {
    const seen = lookedAt({ action: check }) ?? '';
    if (seen !== '') return { code: 'conduct.minutes.look', params: { place: seen } };
    const code = place === '' ? 'conduct.minutes.check' : 'conduct.minutes.check-at';
    return { code, params: { what, place } };
  }
  const range = tool.ranges.find(({ id }) => id === rangeOf(use));
  const at = placesSaid(use.tool, place, other, plant);
  return range === undefined || tool.ranges.length < 2
    ? { code: 'conduct.minutes.tool', params: { tool: tool.name, at } }
    : { code: 'conduct.minutes.tool-range', params: { tool: tool.name, range: range.name, at } };
}

function placesSaid(tool: string, place: string, other: string, plant: PlantFile | null): Message {
  const from = placeSaid(tool, place, plant);
  if (other === '') return from;
  return {
    code: 'conduct.minutes.between',
    params: { from, other: placeSaid(tool, other, plant) },
  };
}

function placeSaid(tool: string, id: string, plant: PlantFile | null): Message {
  const point = plant === null ? undefined : pointOf(plant, id);
  return point === undefined
    ? { code: 'conduct.name.other', params: { name: id } }
    : placeLabel(point, tool);
}
