import { describe, expect, it } from 'vitest';
import { ladderAfter, rungsOf } from '../../../src/app/guidance/ladder.ts';
import { ADVICE, decision, reasoning } from './toy-reasoning.ts';

const TOOLS = ['manometer'];
const hints = (...times: number[]) => ({ hints: times.map((t) => ({ t })), tools: TOOLS });
const OTHER = { ...ADVICE, check: 'look|sight glass' };

describe('the hint ladder', () => {
  it('climbs with each hint, and begins anew with a new decision', () => {
    const first = ladderAfter(null, reasoning({}), hints());
    expect(rungsOf(first, hints())).toEqual([]);
    expect(rungsOf(first, hints(11, 12))).toEqual([0, 1]);
    const later = reasoning({ decisions: [decision({}), decision({ t: 12 })], next: [OTHER] });
    const second = ladderAfter(first, later, hints(11, 12));
    expect(rungsOf(second, hints(11, 12))).toEqual([]);
    expect(second?.advice).toEqual(OTHER);
    expect(rungsOf(second, hints(11, 12, 13))).toEqual([0]);
  });

  it('keeps to what it has said though what is best moves on with time', () => {
    const first = ladderAfter(null, reasoning({}), hints());
    expect(ladderAfter(first, reasoning({ next: [OTHER] }), hints())?.advice).toEqual(OTHER);
    expect(ladderAfter(first, reasoning({ next: [OTHER] }), hints(11))?.advice).toEqual(ADVICE);
  });

  it('is not put back by asking people or by ranking suspects', () => {
    const first = ladderAfter(null, reasoning({}), hints());
    const asked = reasoning({
      decisions: [decision({}), decision({ kind: 'ask' }), decision({ kind: 'suspect' })],
    });
    expect(rungsOf(ladderAfter(first, asked, hints(11)), hints(11))).toEqual([0]);
  });

  it('comes back with saved work as far as it was climbed', () => {
    const again = ladderAfter(null, reasoning({}), hints(3, 11, 12));
    expect(rungsOf(again, hints(3, 11, 12))).toEqual([0, 1]);
  });

  it('proposes what the bag can do before what was left in the van', () => {
    const spray = { ...ADVICE, check: 'strobe|fan-shaft' };
    expect(ladderAfter(null, reasoning({ next: [spray, ADVICE] }), hints())?.advice).toBe(ADVICE);
    expect(ladderAfter(null, reasoning({ next: [spray] }), hints())?.advice).toBe(spray);
  });

  it('has nothing to climb where nothing is left to be told apart', () => {
    expect(ladderAfter(null, reasoning({ next: [] }), hints())?.advice).toBeNull();
  });
});
