import type { MinutesUsed } from '../../bench/index.ts';

/** What minutes go to, in the order of the table. */
export const MINUTE_GROUPS = ['plant', 'finding', 'paper', 'mending', 'hands'] as const;
export type MinuteGroup = (typeof MINUTE_GROUPS)[number];

export interface GroupedMinutes {
  readonly group: MinuteGroup;
  /** How often; the time at the plant counts as one. */
  readonly times: number;
  readonly minutes: number;
  readonly cost: number;
}

const PREFIX = 'conduct.minutes.';
const GROUP_OF: Readonly<Record<string, MinuteGroup>> = {
  plant: 'plant',
  tool: 'finding',
  'tool-range': 'finding',
  look: 'finding',
  listen: 'finding',
  smell: 'finding',
  check: 'finding',
  'check-at': 'finding',
  ask: 'paper',
  'read-sheet': 'paper',
  'commissioning-sheet': 'paper',
  history: 'paper',
  repair: 'mending',
  adjust: 'mending',
};

/** The lines of a visit summed by what they went to; a group without a line is left out. */
export function groupMinutes({ lines }: MinutesUsed): readonly GroupedMinutes[] {
  return MINUTE_GROUPS.flatMap((group) => {
    const own = lines.filter(({ what }) => groupOf(what.code) === group);
    if (own.length === 0) return [];
    return [
      {
        group,
        times: own.length,
        minutes: own.reduce((sum, line) => sum + line.minutes, 0),
        cost: own.reduce((sum, line) => sum + line.cost, 0),
      },
    ];
  });
}

function groupOf(code: string): MinuteGroup {
  return GROUP_OF[code.slice(PREFIX.length)] ?? 'hands';
}
