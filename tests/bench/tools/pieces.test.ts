import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createToolState, readTool, type ToolUse } from '../../../src/bench/index.ts';
import { createRun } from '../../../src/engine/index.ts';
import { shippedSetup } from '../../support/library.ts';
import { earlier } from './toy-run.ts';

const USES: readonly ToolUse[] = [
  { tool: 'manometer', place: 'regulated', range: 'mid' },
  { tool: 'manometer', place: 'inlet', range: 'low' },
  { tool: 'manometer', place: 'windbox', other: 'furnace', range: 'low' },
  { tool: 'multimeter', place: 'L1', other: 'N', range: 'volts' },
  { tool: 'multimeter', place: 'fan-motor-lead', range: 'amps' },
  { tool: 'flame-signal meter', place: 'flame-sensor' },
  { tool: 'flue-gas analyser', place: 'flue', range: 'short' },
  { tool: 'leak spray', place: 'regulated' },
  { tool: 'strobe', place: 'motor-shaft', range: 'low' },
  { tool: 'thermometer', place: 'flue', range: 'pocket' },
  { tool: 'mirror and torch', place: 'sight glass' },
];

describe('readings', () => {
  const run = createRun(shippedSetup('laundry-healthy-start'));
  run.advanceTo(150);

  it.each(USES.map((use) => [`${use.tool} at ${use.place}`, use] as const))(
    'of a %s do not depend on how often they are asked for',
    (_title, use) => {
      fc.assert(
        fc.property(
          fc.integer({ min: 0, max: 900 }),
          fc.array(fc.integer({ min: 0, max: run.frameCount() }), { maxLength: 12 }),
          (tenths, asked) => {
            const once = readTool(run, use, createToolState(use, tenths / 10));
            const state = createToolState(use, tenths / 10);
            for (const frames of [...asked].sort((a, b) => a - b)) {
              readTool(earlier(run, frames), use, state);
            }
            const last = readTool(run, use, state);
            expect(last).toEqual(once);
            // Asked again without anything new: the same again.
            expect(readTool(run, use, state)).toEqual(once);
          },
        ),
        { seed: 20261128, numRuns: 25 },
      );
    },
  );

  it('leave the run bit for bit as it was', () => {
    const measured = createRun(shippedSetup('laundry-healthy-start'));
    const states = USES.map((use) => createToolState(use, 0));
    for (let t = 2; t <= 60; t += 2) {
      measured.advanceTo(t);
      USES.forEach((use, i) => {
        readTool(measured, use, states[i] as (typeof states)[number]);
      });
    }
    const left = createRun(shippedSetup('laundry-healthy-start'));
    left.advanceTo(60);
    expect(measured.hash()).toBe(left.hash());
  });

  it('take nothing that only the simulator knows', () => {
    const hidden = {
      ...run,
      channels: run.channels.map((channel) => ({ ...channel, part: 'hidden' as const })),
    };
    for (const use of USES) {
      // A meter at wires and eyes have a way of their own into the run; foam has it too.
      const ownWay = ['mirror and torch', 'leak spray'].includes(use.tool) || use.place === 'L1';
      const reading = readTool(hidden, use, createToolState(use, 20));
      if (!ownWay) expect(reading).toMatchObject({ value: null, shown: '', flags: ['no signal'] });
    }
  });

  it('are the same in a second run of the same setup', () => {
    const again = createRun(shippedSetup('laundry-healthy-start'));
    again.advanceTo(150);
    for (const use of USES) {
      expect(readTool(again, use, createToolState(use, 20))).toEqual(
        readTool(run, use, createToolState(use, 20)),
      );
    }
  });
});
