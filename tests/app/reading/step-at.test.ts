import { describe, expect, it } from 'vitest';
import { controlsAt } from '../../../src/app/reading/controls-at.ts';
import { insertedByHand, isGivenAway } from '../../../src/app/reading/hidden-faults.ts';
import { stepAt } from '../../../src/app/reading/step-at.ts';
import type { HistoryEvent } from '../../../src/app/session/protocol.ts';

const EVENTS: readonly HistoryEvent[] = [
  { t: 0, type: 'fault', fault: 'damper jammed', severity: 40, on: true },
  { t: 5, type: 'action', action: { t: 5, type: 'call-for-heat', on: true } },
  { t: 5, type: 'step', step: 'at-rest check' },
  { t: 7, type: 'step', step: 'drive to purge' },
  {
    t: 9,
    type: 'action',
    action: { t: 9, type: 'insert-fault', fault: 'lens dirty', severity: 1 },
  },
  { t: 9, type: 'fault', fault: 'lens dirty', severity: 1, on: true },
  { t: 67, type: 'lockout', cause: 'purge position not proved', step: 'drive to purge' },
  { t: 67, type: 'step', step: 'lockout' },
  { t: 80, type: 'action', action: { t: 80, type: 'reset', pressed: true } },
  { t: 81, type: 'reset', count: 1 },
  { t: 81, type: 'step', step: 'standby' },
];

describe('the panel as it was', () => {
  it.each([
    [0, 'standby', 0],
    [5, 'at-rest check', 5],
    [66.9, 'drive to purge', 7],
    [70, 'lockout', 67],
    [90, 'standby', 81],
  ])('at %d s the step is %s', (tS, step, sinceS) => {
    expect(stepAt(EVENTS, tS)).toMatchObject({ step, sinceS });
  });

  it('shows a lockout while it stands, with its cause and step, and not after the reset', () => {
    expect(stepAt(EVENTS, 66).lockout).toBeNull();
    expect(stepAt(EVENTS, 70).lockout).toEqual({
      cause: 'purge position not proved',
      step: 'drive to purge',
      atS: 67,
    });
    expect(stepAt(EVENTS, 82)).toMatchObject({ lockout: null, resets: 1 });
  });

  it('sets the switches as they stood', () => {
    expect(controlsAt(EVENTS, 4)).toMatchObject({ callForHeat: false, resetPressed: false });
    expect(controlsAt(EVENTS, 80.5)).toMatchObject({ callForHeat: true, resetPressed: true });
    expect(controlsAt(EVENTS, 8).standingFaults.map(({ fault }) => fault)).toEqual([
      'damper jammed',
    ]);
  });

  it("keeps quiet about the scenario's own fault, not about one put in by hand", () => {
    const told = EVENTS.filter((event) => !isGivenAway(event, EVENTS));
    expect(JSON.stringify(told)).not.toContain('damper jammed');
    expect(insertedByHand('lens dirty', EVENTS)).toBe(true);
  });
});
