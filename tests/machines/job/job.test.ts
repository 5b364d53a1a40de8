import { describe, expect, it } from 'vitest';
import {
  createDesk,
  type DeskEvent,
  GUIDANCE_MODES,
  type Guidance,
  JOB_PHASES,
} from '../../../machines/index.ts';
import { claimOf, deskAfter, LEAVE, PIN, refusalOf, TO } from './story.ts';

const arrivedFor = (guidance: Guidance): DeskEvent[] => [
  { type: 'arrive', tools: [], guidance },
  { type: 'begin' },
];

describe('a job', () => {
  it('[JB-1] goes from card to debrief, one phase after the other', () => {
    const phases = [[], ...Object.values(TO)].map((events) => deskAfter('job', events).phase);
    expect(phases).toEqual(JOB_PHASES);
  });
  it('[JB-1] takes along what the card permits, and refuses a tool that it does not', () => {
    const plan = { tools: ['manometer'] };
    const card = createDesk('job', plan);
    expect(refusalOf(card, { type: 'arrive', tools: ['manometer', 'strobe'] })).toBe(
      'tool not permitted',
    );
    const there = deskAfter('job', [{ type: 'arrive', tools: ['manometer'] }], plan);
    expect(there.tools).toEqual(['manometer']);
  });
  it('[JB-2] has notes on the card, asking at the plant, claims only once begun', () => {
    const card = createDesk('job', {});
    expect(refusalOf(card, { type: 'note', text: 'cold again' })).toBeNull();
    expect(refusalOf(card, PIN)).toBe('not there yet');
    expect(refusalOf(card, { type: 'begin' })).toBe('not there yet');
    const there = deskAfter('job', TO.plant);
    expect(refusalOf(there, { type: 'ask', topic: 'habits' })).toBeNull();
    expect(refusalOf(there, claimOf('pilot valve'))).toBe('begin first');
  });
  it('[JB-3] keeps pins and notes in their order, with their time, whatever comes after', () => {
    const other: DeskEvent = { ...PIN, place: 'W13' };
    const desk = deskAfter('job', [...TO.claim, other, { type: 'note', text: 'wet cable' }]);
    expect(desk.pins.map(({ t, place }) => [t, place])).toEqual([
      [2, 'W12'],
      [4, 'W13'],
    ]);
    expect(desk.notes).toEqual([{ t: 5, text: 'wet cable' }]);
  });
  it('[JB-4] keeps a topic once, and that the sheet was read', () => {
    const ask: DeskEvent = { type: 'ask', topic: 'since when' };
    const desk = deskAfter('job', [...TO.claim, ask, { type: 'read sheet' }, ask]);
    expect(desk.asked).toEqual(['since when']);
    expect(desk.sheetRead).toBe(true);
    expect(deskAfter('job', TO.claim).sheetRead).toBe(false);
  });
  it('[JB-5] replaces the ranking, and refuses one that names something twice', () => {
    const desk = deskAfter('job', [
      ...TO.working,
      { type: 'suspect', ranked: ['a', 'b'] },
      { type: 'suspect', ranked: ['b', 'a', 'c'] },
    ]);
    expect(desk.suspects).toEqual(['b', 'a', 'c']);
    expect(refusalOf(desk, { type: 'suspect', ranked: ['a', 'a'] })).toBe('suspected twice');
  });
  it('[JB-6] marks a claim that no pin supports, and takes it', () => {
    const desk = deskAfter('job', [
      ...TO.working,
      PIN,
      claimOf('pilot valve'),
      claimOf('lens', [0]),
    ]);
    expect(desk.claims.map(({ part, unsupported }) => [part, unsupported])).toEqual([
      ['pilot valve', true],
      ['lens', false],
    ]);
  });
  it('[JB-6] refuses a claim on a pin that is not there, without a part, or made already', () => {
    const desk = deskAfter('job', TO.claim);
    expect(refusalOf(desk, claimOf('lens', [1]))).toBe('no such pin');
    expect(refusalOf(desk, claimOf('lens', [-1]))).toBe('no such pin');
    expect(refusalOf(desk, claimOf(' '))).toBe('nothing named');
    expect(refusalOf(desk, claimOf('low-gas switch'))).toBe('claimed already');
  });
  it('[JB-7] withdraws the last claim, and opens the search again with the last of all', () => {
    const two = deskAfter('job', [...TO.claim, claimOf('lens'), { type: 'withdraw' }]);
    expect(two.phase).toBe('claim');
    expect(two.claims.map(({ part }) => part)).toEqual(['low-gas switch']);
    const none = deskAfter('job', [...TO.proof, { type: 'withdraw' }]);
    expect(none.phase).toBe('working');
    expect(refusalOf(none, { type: 'withdraw' })).toBe('nothing claimed');
  });
  it('[JB-8] proves nothing without a claim, and goes to proof with one', () => {
    expect(refusalOf(deskAfter('job', TO.working), { type: 'prove' })).toBe('nothing claimed');
    expect(refusalOf(deskAfter('job', TO.plant), { type: 'prove' })).toBe('nothing claimed');
    expect(deskAfter('job', TO.proof).phase).toBe('proof');
  });
  it('[JB-9] goes back to the work when the proof fails, and to the proof again', () => {
    const again = deskAfter('job', [...TO.proof, { type: 'begin' }]);
    expect(again.phase).toBe('working');
    expect(again.claims).toHaveLength(1);
    expect(deskAfter('job', [...TO.proof, { type: 'begin' }, { type: 'prove' }]).phase).toBe(
      'proof',
    );
    expect(again.begunAt).toBe(1);
  });
  it('[JB-9] takes the plant back from a handover, whose note then no longer stands', () => {
    const back = deskAfter('job', [...TO.handover, { type: 'begin' }]);
    expect(back.phase).toBe('working');
    expect(back.handover).toBeNull();
  });
  it('[JB-10] hands over only from the proof, and says what is missing before it', () => {
    expect(refusalOf(deskAfter('job', TO.plant), LEAVE)).toBe('nothing claimed');
    expect(refusalOf(deskAfter('job', TO.working), LEAVE)).toBe('nothing claimed');
    expect(refusalOf(deskAfter('job', TO.claim), LEAVE)).toBe('prove first');
    expect(deskAfter('job', TO.handover).handover).toMatchObject({ t: 5, done: 'replaced' });
  });
  it('[JB-10] takes a better note until the job is closed', () => {
    const better: DeskEvent = { ...LEAVE, done: 'replaced, impulse line blown through' };
    expect(deskAfter('job', [...TO.handover, better]).handover).toMatchObject({
      t: 6,
      done: 'replaced, impulse line blown through',
    });
  });
  it('[JB-11] closes only after the handover, and after it does little else', () => {
    for (const to of [TO.plant, TO.working, TO.claim, TO.proof]) {
      expect(refusalOf(deskAfter('job', to), { type: 'close' })).toBe('hand over first');
    }
    expect(refusalOf(deskAfter('job', TO.handover), claimOf('lens'))).toBe('handed over');
  });
  it('[JB-12] refuses everything after the close', () => {
    const closed = deskAfter('job', TO.debrief);
    const all: DeskEvent[] = [PIN, LEAVE, { type: 'close' }, { type: 'begin' }, claimOf('lens')];
    for (const event of all) expect(refusalOf(closed, event)).toBe('closed');
    expect(refusalOf(closed, { type: 'note', text: 'too late' })).toBe('closed');
  });
  it('[JB-23] has the help that was chosen on arriving, and practice where nothing was chosen', () => {
    for (const guidance of GUIDANCE_MODES) {
      expect(deskAfter('job', [{ type: 'arrive', tools: [], guidance }]).guidance).toBe(guidance);
    }
    expect(deskAfter('job', TO.debrief).guidance).toBe('practice');
    const exam = deskAfter('job', [{ type: 'arrive', tools: [], guidance: 'assessment' }]);
    expect(refusalOf(exam, { type: 'arrive', tools: [], guidance: 'guided' })).toBe('not now');
  });
  it('[JB-24] keeps each hint of guided work with its time, and gives none elsewhere', () => {
    const hints: DeskEvent[] = [
      { type: 'hint', rung: 0 },
      { type: 'hint', rung: 3 },
    ];
    const guided = deskAfter('job', [...arrivedFor('guided'), ...hints]);
    expect(guided.hints).toEqual([
      { t: 2, rung: 0 },
      { t: 3, rung: 3 },
    ]);
    for (const guidance of ['practice', 'assessment'] as const) {
      const desk = deskAfter('job', arrivedFor(guidance));
      expect(refusalOf(desk, { type: 'hint', rung: 0 })).toBe('hints are for guided work');
    }
    expect(refusalOf(createDesk('job', {}), { type: 'hint', rung: 0 })).toBe('not there yet');
  });
  it('[JB-25] keeps when feedback was asked for, and refuses it in an assessment', () => {
    const feedback: DeskEvent = { type: 'feedback' };
    for (const guidance of ['guided', 'practice'] as const) {
      const desk = deskAfter('job', [...arrivedFor(guidance), feedback, PIN, feedback]);
      expect(desk.feedbacks).toEqual([2, 4]);
    }
    expect(refusalOf(deskAfter('job', arrivedFor('assessment')), feedback)).toBe(
      'no feedback in an assessment',
    );
  });
  it('[JB-14] refuses what the phase does not provide for, and is left as it was', () => {
    const desk = deskAfter('job', TO.working);
    const before = JSON.stringify(desk);
    expect(refusalOf(desk, { type: 'next' })).toBe('not now');
    expect(refusalOf(desk, { type: 'arrive', tools: [] })).toBe('not now');
    expect(JSON.stringify(desk)).toBe(before);
  });
});
