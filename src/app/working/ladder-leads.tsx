import { type ReactNode, useMemo, useState } from 'react';
import type { HeldLeads, Ladder, LadderTag } from '../../view/index.ts';
import { LadderHost } from './ladder-host.tsx';
import { LadderMeterStrip, type MeterKind, type StripReading } from './ladder-meter-strip.tsx';

/** A multimeter at its places, as the bench names them. */
export interface LeadUse {
  readonly tool: 'multimeter';
  readonly place: string;
  readonly other?: string;
  readonly range?: string;
}

interface Props {
  /** Every tool that is connected; multimeters are shown on the ladder. */
  readonly uses: readonly {
    readonly tool: string;
    readonly place: string;
    readonly other?: string | undefined;
    readonly range?: string | undefined;
  }[];
  /** The meter in hand was put on new places, or taken off. */
  readonly onPlace: (next: LeadUse | null, before: LeadUse | null) => void;
  readonly reading: (use: LeadUse) => StripReading | null;
  readonly follow: boolean;
  readonly onDrawing: (ladder: Ladder | null) => void;
  readonly live?: boolean;
  /** Wires put across by hand, and whatever else lies on the ladder. */
  readonly tags?: readonly LadderTag[];
  readonly extra?: ReactNode;
}

/** The ladder with a multimeter in hand; others that are connected are shown by letters. */
export function LadderLeads(props: Props) {
  const { uses, onPlace, reading, follow, onDrawing, live = true, tags, extra } = props;
  const [kind, setKind] = useState<MeterKind>(() => kindOf(lastMeter(uses)?.range));
  const [leads, setLeads] = useState<HeldLeads>(() => {
    const last = lastMeter(uses);
    return { from: last?.place ?? null, to: last?.other ?? null, hand: 'from' };
  });
  const single = kind === 'amps';
  const use = useMemo(() => measured(leads, kind), [leads, kind]);
  function change(nextLeads: HeldLeads, nextKind: MeterKind): void {
    const next = measured(nextLeads, nextKind);
    setLeads(nextLeads);
    setKind(nextKind);
    if (!isSame(next, use)) onPlace(next, use);
  }
  const meter = {
    leads,
    single,
    onLeads: (next: HeldLeads) => change(next, kind),
  };
  const lying = useMemo(() => [...(tags ?? []), ...othersOf(uses, use)], [tags, uses, use]);
  return (
    <LadderHost
      follow={follow}
      onDrawing={onDrawing}
      live={live}
      meter={meter}
      tags={lying}
      extra={extra}
      strip={
        <LadderMeterStrip
          reading={use === null ? null : reading(use)}
          kind={kind}
          onKind={(next) => change(single || next === 'amps' ? fitting(leads, next) : leads, next)}
          onClear={() => change({ from: null, to: null, hand: 'from' }, kind)}
        />
      }
    />
  );
}

const LETTERS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ';

function othersOf(uses: Props['uses'], own: LeadUse | null): LadderTag[] {
  return uses
    .filter((each) => each.tool === 'multimeter' && !isSame(each, own))
    .map(({ place, other }, i) => ({
      kind: 'meter',
      tag: LETTERS[i % LETTERS.length] ?? '',
      from: place,
      to: other ?? null,
    }));
}

/** A clamp goes round the wire of one terminal; leads that lie on a wire alone do not fit it. */
function fitting(leads: HeldLeads, kind: MeterKind): HeldLeads {
  if (kind !== 'amps') return { ...leads, to: null, hand: leads.from === null ? 'from' : 'to' };
  const isTerminal = leads.from?.includes(':') === true;
  return { from: isTerminal ? leads.from : null, to: null, hand: 'from' };
}

function measured({ from, to }: HeldLeads, kind: MeterKind): LeadUse | null {
  if (from === null) return null;
  if (kind === 'amps') {
    return from.includes(':') ? { tool: 'multimeter', place: from, range: kind } : null;
  }
  return to === null || to === from
    ? null
    : { tool: 'multimeter', place: from, other: to, range: kind };
}

function lastMeter(uses: Props['uses']): Props['uses'][number] | undefined {
  return uses.filter(({ tool }) => tool === 'multimeter').at(-1);
}

function kindOf(range: string | undefined): MeterKind {
  return range === 'ohms' || range === 'continuity' || range === 'amps' ? range : 'volts';
}

function isSame(a: Props['uses'][number] | null, b: LeadUse | null): boolean {
  if (a === null || b === null) return a === b;
  return (
    a.place === b.place &&
    (a.other ?? '') === (b.other ?? '') &&
    kindOf(a.range) === kindOf(b.range)
  );
}
