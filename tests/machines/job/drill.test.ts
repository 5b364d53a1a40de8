import { describe, expect, it } from 'vitest';
import { createDesk, type DeskEvent, DRILL_PHASES } from '../../../machines/index.ts';
import { claimOf, deskAfter, LEAVE, PIN, refusalOf } from './story.ts';

const PLAN = { limitS: 120, options: 3 };
const BEGIN: DeskEvent = { type: 'begin' };
const ANSWER: DeskEvent = { type: 'answer', step: 'question', option: 2 };

describe('a drill', () => {
  it('[JB-15] runs card, working, claim, debrief from its begin', () => {
    const story: DeskEvent[][] = [[], [BEGIN], [BEGIN, ANSWER], [BEGIN, ANSWER, { type: 'close' }]];
    expect(story.map((events) => deskAfter('drill', events, PLAN).phase)).toEqual(DRILL_PHASES);
    expect(refusalOf(createDesk('drill', PLAN), PIN)).toBe('begin first');
  });
  it('[JB-16] takes an answer to the last second and none after', () => {
    const working = deskAfter('drill', [{ type: 'arrive', tools: [] }, BEGIN], PLAN);
    expect(refusalOf(working, ANSWER, 1 + 120)).toBeNull();
    expect(refusalOf(working, ANSWER, 1 + 120.1)).toBe('time is up');
    expect(refusalOf(working, claimOf('lens'), 122)).toBe('time is up');
    expect(refusalOf(working, { type: 'close' }, 500)).toBeNull();
  });
  it('[JB-16] takes a choice that is there, or a claim on pins that are', () => {
    const working = deskAfter('drill', [BEGIN, PIN], PLAN);
    expect(refusalOf(working, { ...ANSWER, option: 3 } as DeskEvent, 9)).toBe('no such option');
    expect(refusalOf(working, { ...ANSWER, option: 0.5 } as DeskEvent, 9)).toBe('no such option');
    expect(refusalOf(working, claimOf('lens', [1]), 9)).toBe('no such pin');
    const claimed = deskAfter('drill', [BEGIN, PIN, claimOf('lens', [0])], PLAN);
    expect(claimed.claims).toMatchObject([{ part: 'lens', unsupported: false }]);
  });
  it('[JB-17] is answered once; then there are notes and the close', () => {
    const answered = deskAfter('drill', [BEGIN, ANSWER], PLAN);
    expect(refusalOf(answered, ANSWER)).toBe('already answered');
    expect(refusalOf(answered, claimOf('lens'))).toBe('already answered');
    expect(refusalOf(answered, { type: 'note', text: 'of course' })).toBeNull();
    expect(refusalOf(answered, { type: 'close' })).toBeNull();
  });
  it('[JB-14] knows no handover', () => {
    expect(refusalOf(deskAfter('drill', [BEGIN], PLAN), LEAVE)).toBe('not now');
  });
});
