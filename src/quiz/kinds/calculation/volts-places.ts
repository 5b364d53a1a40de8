/** Where the leads of the meter may go, and what should stand between them. */
import { describeWiring, type FaultOrder, type Run } from '../../../engine/index.ts';
import type { Statement } from '../../item/statement.ts';
import { deviceTerm } from './device-words.ts';
import { firstOpen, type Way, type WayPart, waysOf } from './wiring-way.ts';

export const FORMS = [
  'behind made',
  'behind open',
  'across open',
  'across made',
  'wire out',
] as const;
export type Form = (typeof FORMS)[number];

/** Wires that come out of the first terminal of an element, by what the catalogue calls it. */
export const WIRES_OUT: Readonly<Record<string, string>> = {
  'wire off at the airflow switch': 'airflow',
  'wire off at the low-gas switch': 'low-gas',
  'wire off at the first low-water cut-off': 'first-low-water',
  'wire off at the high limit': 'high-limit',
  'wire off at the operating control': 'operating-control',
  'wire off at the upstream valve': 'upstream-valve',
  'wire off at the downstream valve': 'downstream-valve',
  'wire off at the pilot valve': 'pilot-valve',
  'wire off at the fan contactor': 'fan.contactor',
};
export interface Place {
  readonly way: Way;
  readonly from: string;
  readonly to: string;
  /** Whether the supply stands between the leads. */
  readonly volts: boolean;
  readonly asks: Statement;
  readonly told: readonly Statement[];
  readonly because: Statement;
}

export function placesOf(run: Run, form: Form, faults: readonly FaultOrder[]): readonly Place[] {
  const ways = waysOf(run);
  switch (form) {
    case 'behind made':
      return ways.filter((way) => firstOpen(way) === null).map((way) => toNeutral(way, null));
    case 'behind open':
      return ways.flatMap((way) => {
        const open = firstOpen(way);
        return open === null ? [] : [toNeutral(way, open)];
      });
    case 'across open':
    case 'across made':
      return ways.flatMap((way) => {
        const last = way.parts[way.parts.length - 1] as WayPart;
        const before = way.parts.slice(0, -1);
        const wanted = form === 'across made';
        return before.every(({ made }) => made) && last.made === wanted ? [across(way, last)] : [];
      });
    case 'wire out':
      return wireOut(run, ways, faults);
  }
}

function toNeutral(way: Way, open: WayPart | null): Place {
  const { to, neutral } = way;
  return {
    way,
    from: to,
    to: neutral,
    volts: open === null,
    asks: { code: 'quiz.sum.volts.asks.wire', with: { wire: to, neutral } },
    told: [],
    because:
      open === null
        ? { code: 'quiz.sum.volts.work.made', with: { from: way.from, wire: to } }
        : {
            code: 'quiz.sum.volts.work.open',
            with: { from: way.from, wire: to, device: deviceTerm(open.element.name) },
          },
  };
}

function across(way: Way, part: WayPart): Place {
  const { name } = part.element;
  return {
    way,
    from: `${name}:1`,
    to: `${name}:2`,
    volts: !part.made,
    asks: { code: 'quiz.sum.volts.asks.across', with: { device: deviceTerm(name) } },
    told: [{ code: 'quiz.sum.volts.leads-on', with: { wire: way.to, neutral: way.neutral } }],
    because: {
      code: part.made ? 'quiz.sum.volts.work.across-made' : 'quiz.sum.volts.work.across-open',
      with: { device: deviceTerm(name) },
    },
  };
}

/** The wire hangs beside its terminal: it has what it had, and the terminal has nothing. */
function wireOut(run: Run, ways: readonly Way[], faults: readonly FaultOrder[]): readonly Place[] {
  const name = WIRES_OUT[faults[0]?.fault ?? ''];
  if (name === undefined) return [];
  const { elements } = describeWiring(run.setup.plant);
  const ends = elements.find((element) => element.name === name);
  if (ends === undefined) return [];
  return ways.flatMap((way): Place[] => {
    if (way.to !== ends.from || firstOpen(way) !== null) return [];
    const device = deviceTerm(name);
    const told = [{ code: 'quiz.sum.volts.out', with: { wire: way.to, device } }];
    const at = { wire: way.to, device, neutral: way.neutral };
    return [
      {
        way,
        from: way.to,
        to: way.neutral,
        volts: true,
        asks: { code: 'quiz.sum.volts.asks.loose-end', with: at },
        told,
        because: { code: 'quiz.sum.volts.work.loose-end', with: at },
      },
      {
        way,
        from: `${name}:1`,
        to: way.neutral,
        volts: false,
        asks: { code: 'quiz.sum.volts.asks.bare-terminal', with: at },
        told,
        because: { code: 'quiz.sum.volts.work.bare-terminal', with: at },
      },
    ];
  });
}
