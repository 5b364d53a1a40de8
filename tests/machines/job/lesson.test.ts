import { describe, expect, it } from 'vitest';
import { createDesk, type DeskEvent, type DeskPlan } from '../../../machines/index.ts';
import { deskAfter, PIN, refusalOf } from './story.ts';

const PLAN: DeskPlan = {
  steps: [
    { step: 'at-rest check', options: 3, mayBreak: true },
    { step: 'purge', options: 2 },
  ],
};
const BEGIN: DeskEvent = { type: 'begin' };
const BREAK: DeskEvent = { type: 'break', fault: 'air switch welded' };
const NEXT: DeskEvent = { type: 'next' };
const explain = (step: string): DeskEvent => ({ type: 'explain', step });
const answer = (step: string, option = 0): DeskEvent => ({ type: 'answer', step, option });
const FIRST = [BEGIN, explain('at-rest check'), answer('at-rest check', 2)];
const SECOND = [...FIRST, NEXT, explain('purge'), answer('purge')];

function phaseAfter(events: readonly DeskEvent[]) {
  return deskAfter('lesson', events, PLAN).phase;
}

describe('a lesson', () => {
  it('[JB-18] stops at its steps in their order and explains no other', () => {
    expect(phaseAfter([])).toBe('intro');
    const running = deskAfter('lesson', [BEGIN], PLAN);
    expect(running.phase).toBe('run');
    expect(refusalOf(running, explain('purge'))).toBe('not the next step');
    expect(phaseAfter([BEGIN, explain('at-rest check')])).toBe('explain');
    expect(refusalOf(createDesk('lesson', PLAN), explain('at-rest check'))).toBe('begin first');
  });
  it('[JB-19] takes one answer of the step it stands at, right or wrong', () => {
    const stopped = deskAfter('lesson', [BEGIN, explain('at-rest check')], PLAN);
    expect(refusalOf(stopped, answer('purge'))).toBe('not this step');
    expect(refusalOf(stopped, answer('at-rest check', 3))).toBe('no such option');
    const answered = deskAfter('lesson', FIRST, PLAN);
    expect(answered.answers).toEqual([{ t: 2, step: 'at-rest check', option: 2 }]);
    expect(refusalOf(answered, answer('at-rest check'))).toBe('already answered');
  });
  it('[JB-20] goes on after the answer, and behind the last step to the end', () => {
    const stopped = deskAfter('lesson', [BEGIN, explain('at-rest check')], PLAN);
    expect(refusalOf(stopped, NEXT)).toBe('answer first');
    expect(phaseAfter([...FIRST, NEXT])).toBe('run');
    expect(phaseAfter([...SECOND, NEXT])).toBe('outro');
  });
  it('[JB-21] breaks one thing, after the answer and where offered, and puts it back first', () => {
    const stopped = deskAfter('lesson', [BEGIN, explain('at-rest check')], PLAN);
    expect(refusalOf(stopped, BREAK)).toBe('answer first');
    const broken = deskAfter('lesson', [...FIRST, BREAK, PIN], PLAN);
    expect(broken.broken).toBe('air switch welded');
    expect(refusalOf(broken, BREAK)).toBe('put it back first');
    expect(refusalOf(broken, NEXT)).toBe('put it back first');
    const mended = deskAfter('lesson', [...FIRST, BREAK, { type: 'put back' }], PLAN);
    expect([mended.phase, mended.broken]).toEqual(['answered', null]);
    expect(refusalOf(mended, { type: 'put back' })).toBe('nothing is broken');
    expect(refusalOf(deskAfter('lesson', SECOND, PLAN), BREAK)).toBe('nothing to break here');
  });
  it('[JB-13] may be taken back to before something was broken', () => {
    const broken = deskAfter('lesson', [...FIRST, BREAK], PLAN);
    expect(refusalOf(broken, { type: 'put back' }, 1)).toBeNull();
  });
  it('[JB-22] is closed at its end, not before', () => {
    expect(refusalOf(deskAfter('lesson', SECOND, PLAN), { type: 'close' })).toBe('not now');
    expect(phaseAfter([...SECOND, NEXT, { type: 'close' }])).toBe('debrief');
  });
  it('[JB-20] without stops is only its words', () => {
    expect(deskAfter('lesson', [BEGIN]).phase).toBe('outro');
  });
});
