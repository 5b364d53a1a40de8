import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  createDesk,
  DESK_KINDS,
  type DeskEntry,
  type DeskEvent,
  type DeskPlan,
  type DeskState,
  foldDesk,
  takeEntry,
} from '../../../machines/index.ts';
import { claimOf, deskAfter, LEAVE, PIN, refusalOf, TO } from './story.ts';

const SEED = 41;
const PLAN: DeskPlan = {
  tools: ['manometer'],
  limitS: 120,
  options: 2,
  steps: [
    { step: 'standby', options: 2, mayBreak: true },
    { step: 'purge', options: 3 },
  ],
};
const EVENTS: readonly DeskEvent[] = [
  { type: 'arrive', tools: ['manometer'] },
  { type: 'arrive', tools: ['manometer'], guidance: 'guided' },
  { type: 'arrive', tools: ['manometer'], guidance: 'assessment' },
  { type: 'arrive', tools: ['strobe'] },
  { type: 'begin' },
  { type: 'ask', topic: 'habits' },
  { type: 'read sheet' },
  PIN,
  { type: 'note', text: 'warm' },
  { type: 'suspect', ranked: ['lens'] },
  { type: 'hint', rung: 1 },
  { type: 'feedback' },
  claimOf('lens', [0]),
  claimOf('pilot valve'),
  { type: 'withdraw' },
  { type: 'prove' },
  LEAVE,
  { type: 'close' },
  { type: 'explain', step: 'standby' },
  { type: 'explain', step: 'purge' },
  { type: 'answer', step: 'standby', option: 1 },
  { type: 'answer', step: 'purge', option: 2 },
  { type: 'break', fault: 'lens dirty' },
  { type: 'put back' },
  { type: 'next' },
];
const entries = fc.array(
  fc.record({ event: fc.constantFrom(...EVENTS), waitS: fc.integer({ min: 0, max: 20 }) }),
  { maxLength: 60 },
);

function timed(steps: readonly { event: DeskEvent; waitS: number }[]): DeskEntry[] {
  let t = 0;
  return steps.map(({ event, waitS }) => {
    t += waitS;
    return { t, ...event };
  });
}
function throughJson<Value>(value: Value): Value {
  return JSON.parse(JSON.stringify(value));
}

describe('leaving and coming back', () => {
  it('[JB-13] gives the same desk from the entries alone, at every point, in any story', () => {
    fc.assert(
      fc.property(fc.constantFrom(...DESK_KINDS), entries, (kind, steps) => {
        let live: DeskState = createDesk(kind, PLAN);
        for (const entry of timed(steps)) {
          const taken = takeEntry(live, entry);
          if (taken.ok) live = taken.state;
          expect(foldDesk(kind, PLAN, throughJson(live.entries))).toEqual(live);
        }
      }),
      { seed: SEED, numRuns: 60 },
    );
  });
  it('[JB-13] goes on from a desk kept as JSON as from the desk itself', () => {
    const desk = deskAfter('job', TO.claim);
    const entry: DeskEntry = { t: 60, type: 'prove' };
    expect(takeEntry(throughJson(desk), entry)).toEqual(takeEntry(desk, entry));
  });
  it('[JB-13] passes over an entry that is refused, and keeps the rest', () => {
    const desk = foldDesk('job', {}, [
      { t: 0, type: 'arrive', tools: [] },
      { t: 1, type: 'close' },
      { t: 2, type: 'begin' },
    ]);
    expect(desk.phase).toBe('working');
    expect(desk.entries.map(({ type }) => type)).toEqual(['arrive', 'begin']);
  });
  it('[JB-13] takes no entry from before the last one, nor one without a time', () => {
    const desk = deskAfter('job', TO.claim);
    expect(refusalOf(desk, PIN, 2)).toBe('earlier than the last entry');
    expect(refusalOf(desk, PIN, 3)).toBeNull();
    expect(refusalOf(desk, PIN, Number.NaN)).toBe('time is not a number');
  });
  it('[JB-12] never leaves the debrief, in any story', () => {
    fc.assert(
      fc.property(fc.constantFrom(...DESK_KINDS), entries, (kind, steps) => {
        const desk = foldDesk(kind, PLAN, timed(steps));
        if (desk.phase !== 'debrief') return;
        expect(desk.entries.at(-1)?.type).toBe('close');
        for (const event of EVENTS) expect(refusalOf(desk, event, 1e6)).toBe('closed');
      }),
      { seed: SEED, numRuns: 60 },
    );
  });
});
