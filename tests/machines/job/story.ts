import {
  createDesk,
  type DeskEvent,
  type DeskKind,
  type DeskPlan,
  type DeskState,
  type HandoverEntry,
  type PinEntry,
  type Refusal,
  takeEntry,
} from '../../../machines/index.ts';

export const PIN: PinEntry = {
  type: 'pin',
  what: 'multimeter: volts',
  place: 'W12',
  other: 'N',
  reading: '0.0 V',
  step: 'standby',
};
export const LEAVE: HandoverEntry = {
  type: 'hand over',
  cause: 'the low-gas switch',
  evidence: 'pin 1',
  done: 'replaced',
  watch: 'the inlet pressure',
};
export function claimOf(part: string, why: readonly number[] = []): DeskEvent {
  return { type: 'claim', part, why, mechanism: 'open' };
}

/** A desk on which all of these were taken, one a second. */
export function deskAfter(
  kind: DeskKind,
  events: readonly DeskEvent[],
  plan: DeskPlan = {},
): DeskState {
  let state = createDesk(kind, plan);
  events.forEach((event, t) => {
    const taken = takeEntry(state, { t, ...event });
    if (!taken.ok) throw new Error(`${event.type} at ${t} was refused: ${taken.refusal}`);
    state = taken.state;
  });
  return state;
}

export function refusalOf(state: DeskState, event: DeskEvent, t = 1000): Refusal | null {
  const taken = takeEntry(state, { t, ...event });
  return taken.ok ? null : taken.refusal;
}

/** A job just before each of its phases. */
export const TO = {
  plant: [{ type: 'arrive', tools: ['multimeter'] }],
  working: [{ type: 'arrive', tools: ['multimeter'] }, { type: 'begin' }],
  claim: [{ type: 'arrive', tools: [] }, { type: 'begin' }, PIN, claimOf('low-gas switch', [0])],
  proof: [
    { type: 'arrive', tools: [] },
    { type: 'begin' },
    PIN,
    claimOf('low-gas switch', [0]),
    { type: 'prove' },
  ],
  handover: [
    { type: 'arrive', tools: [] },
    { type: 'begin' },
    PIN,
    claimOf('low-gas switch', [0]),
    { type: 'prove' },
    LEAVE,
  ],
  debrief: [
    { type: 'arrive', tools: [] },
    { type: 'begin' },
    PIN,
    claimOf('low-gas switch', [0]),
    { type: 'prove' },
    LEAVE,
    { type: 'close' },
  ],
} satisfies Record<string, readonly DeskEvent[]>;
