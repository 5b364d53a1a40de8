import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type ClassEvent,
  createClass,
  foldClass,
  takeClassEntry,
} from '../../../machines/index.ts';
import { ALL, BEGIN, CLOSE, FAULT, numbered, open, poll, showPoll } from './story.ts';

const SEED = 71;
const EVENTS: readonly ClassEvent[] = [
  open(),
  BEGIN,
  BEGIN,
  { type: 'freeze', to: ALL },
  { type: 'freeze', to: { seat: 2 } },
  { type: 'run', to: ALL, speed: 4 },
  { type: 'run', to: { seat: 2 }, speed: 16 },
  { type: 'next step', to: ALL },
  { type: 'rewind', to: { seat: 2 }, toS: 12 },
  { type: 'rewind by', to: ALL, byS: 30 },
  { type: 'do', to: ALL, acts: [FAULT] },
  { type: 'when', id: 'w', to: ALL, step: 'purge', acts: [FAULT] },
  { type: 'forget when', id: 'w' },
  { type: 'lock tools', tools: ['multimeter'] },
  { type: 'hint', to: ALL, text: 'look at the damper' },
  poll('p'),
  showPoll('p'),
  { type: 'end poll', id: 'p' },
  { type: 'spotlight', seat: 4 },
  { type: 'project', shows: 'board', names: true },
  CLOSE,
];
const stories = fc
  .array(fc.constantFrom(...EVENTS), { maxLength: 40 })
  .map((events) => numbered([open(), ...events]));

function throughJson<Value>(value: Value): Value {
  return JSON.parse(JSON.stringify(value));
}

describe('coming late to a class and coming back', () => {
  it('[CL-13] gives the same class from any point on, by way of text', () => {
    const phases = new Set<string>();
    fc.assert(
      fc.property(stories, fc.nat(), (entries, at) => {
        const cut = at % (entries.length + 1);
        const early = foldClass(entries.slice(0, cut));
        const late = foldClass(throughJson(entries.slice(cut)), throughJson(early));
        expect(late).toEqual(foldClass(entries));
        phases.add(late.phase);
      }),
      { seed: SEED, numRuns: 200 },
    );
    expect([...phases].sort()).toEqual(['closed', 'gathering', 'under way']);
  });

  it('[CL-13] changes nothing by what it refuses', () => {
    fc.assert(
      fc.property(stories, (entries) => {
        let state = createClass();
        for (const entry of entries) {
          const before = throughJson(state);
          const taken = takeClassEntry(state, entry);
          expect(state).toEqual(before);
          if (taken.ok) {
            expect(taken.state.n).toBe(entry.n);
            state = taken.state;
          }
        }
      }),
      { seed: SEED, numRuns: 100 },
    );
  });
});
