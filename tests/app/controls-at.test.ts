import { describe, expect, it } from 'vitest';
import { controlsAt } from '../../src/app/reading/controls-at.ts';

describe('the switches of the panel at a moment', () => {
  it('stand as the acts up to then left them, the enable from outside on until it is taken away', () => {
    const off = { t: 10, type: 'remote-enable', on: false } as const;
    const events = [{ t: 10, type: 'action', action: off } as const];
    expect(controlsAt(events, 9.9).remoteEnable).toBe(true);
    expect(controlsAt(events, 10).remoteEnable).toBe(false);
  });
});
