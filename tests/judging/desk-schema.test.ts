/** The desk log at the door: what an older page saved still comes in, and nothing else than what the desk knows. */
import { describe, expect, it } from 'vitest';
import { type DeskEntry, foldDesk, GUIDANCE_MODES, HINT_RUNGS } from '../../machines/job/index.ts';
import { deskSchema } from '../../src/judging/desk/index.ts';

const issuesOf = (entry: unknown) =>
  deskSchema.safeParse([entry]).error?.issues.map(({ path }) => path.join('.')) ?? [];

describe('the desk log at the door', () => {
  it('lets in a visit that was saved before there was guidance to choose: it was practice', () => {
    const saved = [
      { t: 180, type: 'arrive', tools: ['manometer'] },
      { t: 181, type: 'begin' },
    ];
    const read = deskSchema.parse(saved);
    expect(read).toEqual(saved);
    expect(foldDesk('job', {}, read)).toMatchObject({
      guidance: 'practice',
      hints: [],
      feedbacks: [],
    });
  });

  it('lets in every guidance, hint and question for feedback as the desk writes them', () => {
    const entries: DeskEntry[] = [
      ...GUIDANCE_MODES.map((guidance) => ({ t: 1, type: 'arrive', tools: [], guidance }) as const),
      ...HINT_RUNGS.map((rung) => ({ t: 2, type: 'hint', rung }) as const),
      { t: 3, type: 'feedback' },
    ];
    expect(deskSchema.parse(entries)).toEqual(entries);
  });

  it('turns away a guidance and a rung that are not known, by their place', () => {
    expect(issuesOf({ t: 1, type: 'arrive', tools: [], guidance: 'spoilt' })).toEqual([
      '0.guidance',
    ]);
    expect(issuesOf({ t: 1, type: 'hint', rung: 4 })).toEqual(['0.rung']);
    expect(issuesOf({ t: 1, type: 'feedback', of: 'everything' })).toEqual(['0']);
  });
});
