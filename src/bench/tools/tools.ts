import { TOOL_IDS, type ToolId } from '../../../machines/job/index.ts';
import type { Message } from '../message.ts';
import type { Tool, ToolRange } from './tool-types.ts';

interface ToolRow {
  /** The first is set when it comes out of the bag. */
  readonly ranges: readonly string[];
  readonly other: Tool['other'];
  /** From bag to reading, by an unhurried person: training values. */
  readonly minutesToConnect: number;
  readonly caution: boolean;
}

const ROWS: Readonly<Record<ToolId, ToolRow>> = {
  // Nipple opened, hose on, nipple tight again.
  manometer: { ranges: ['mid', 'low', 'high'], other: 'may', minutesToConnect: 3, caution: true },
  multimeter: {
    ranges: ['volts', 'ohms', 'continuity', 'amps'],
    other: 'may',
    minutesToConnect: 1,
    caution: true,
  },
  // The circuit of the sensor is opened, and closed again through the meter.
  'flame-signal meter': { ranges: [], other: 'never', minutesToConnect: 4, caution: true },
  'flue-gas analyser': {
    ranges: ['long', 'short'],
    other: 'never',
    minutesToConnect: 5,
    caution: true,
  },
  'leak spray': { ranges: [], other: 'never', minutesToConnect: 2, caution: true },
  strobe: { ranges: ['high', 'low'], other: 'never', minutesToConnect: 3, caution: true },
  thermometer: {
    ranges: ['pocket', 'surface'],
    other: 'never',
    minutesToConnect: 2,
    caution: true,
  },
  'mirror and torch': { ranges: [], other: 'never', minutesToConnect: 2, caution: true },
};

export const TOOLS: readonly Tool[] = TOOL_IDS.map((id) => {
  const { ranges, other, minutesToConnect, caution } = ROWS[id];
  return {
    id,
    name: { code: toolCode(id) },
    measures: { code: `${toolCode(id)}.measures` },
    ranges: ranges.map((range): ToolRange => ({ id: range, name: rangeName(id, range) })),
    other,
    minutesToConnect,
    caution: caution ? { code: `${toolCode(id)}.caution` } : null,
  };
});

export function toolOf(id: string): Tool | null {
  return TOOLS.find((tool) => tool.id === id) ?? null;
}

/** The range a use means: its own, or the one the tool comes with. */
export function rangeOf(use: { readonly tool: ToolId; readonly range?: string }): string {
  return use.range ?? ROWS[use.tool].ranges[0] ?? '';
}

export function toolCode(id: ToolId): string {
  return `bench.tool.${id.replace(/\s+/g, '-')}`;
}

function rangeName(id: ToolId, range: string): Message {
  return { code: `${toolCode(id)}.${range}` };
}
