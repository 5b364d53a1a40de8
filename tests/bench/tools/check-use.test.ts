import { describe, expect, it } from 'vitest';
import { checkOf, checkUse, TOOLS, type ToolUse, toolUseOf } from '../../../src/bench/index.ts';
import { sayMessage } from '../../../src/i18n/index.ts';
import { shippedSetup } from '../../support/library.ts';

const { plant } = shippedSetup('laundry-healthy-start');

describe('a use that connects', () => {
  it.each<ToolUse>([
    { tool: 'manometer', place: 'regulated' },
    { tool: 'manometer', place: 'windbox', other: 'furnace', range: 'low' },
    { tool: 'multimeter', place: 'L1', other: 'N' },
    { tool: 'multimeter', place: 'fan-relay.coil:1', other: 'earth', range: 'ohms' },
    { tool: 'multimeter', place: 'fan.contactor:1', range: 'amps' },
    { tool: 'multimeter', place: 'fan-motor-lead', range: 'amps' },
    { tool: 'flame-signal meter', place: 'flame-sensor' },
    { tool: 'flue-gas analyser', place: 'flue', range: 'short' },
    { tool: 'leak spray', place: 'interspace' },
    { tool: 'strobe', place: 'motor-shaft' },
    { tool: 'thermometer', place: 'casing', range: 'surface' },
    { tool: 'mirror and torch', place: 'electrode' },
  ])('has no issue: $tool at $place', (use) => {
    expect(checkUse(plant, use)).toBeNull();
  });
});

describe('a use that does not', () => {
  it.each<[ToolUse, string, string]>([
    [{ tool: 'manometer', place: 'L1' }, 'wrong-place', 'bench.tool.manometer.mend'],
    [{ tool: 'manometer', place: 'boiler' }, 'unknown-place', 'bench.tool.manometer.mend'],
    [{ tool: 'manometer', place: 'inlet', range: 'tiny' }, 'unknown-range', 'bench.mend.ranges'],
    [{ tool: 'manometer', place: 'inlet', other: 'inlet' }, 'other-place', 'bench.mend.two-places'],
    [
      { tool: 'manometer', place: 'inlet', other: 'L1' },
      'wrong-place',
      'bench.tool.manometer.mend',
    ],
    [{ tool: 'multimeter', place: 'L1' }, 'other-place', 'bench.mend.second-lead'],
    [
      { tool: 'multimeter', place: 'L1', range: 'amps' },
      'wrong-place',
      'bench.mend.clamp-at-terminal',
    ],
    [
      { tool: 'multimeter', place: 'fan-motor-lead', other: 'N' },
      'wrong-place',
      'bench.mend.use-clamp',
    ],
    [
      { tool: 'multimeter', place: 'fan.contactor:1', other: 'N', range: 'amps' },
      'other-place',
      'bench.mend.leave-other',
    ],
    [
      { tool: 'flue-gas analyser', place: 'windbox' },
      'wrong-place',
      'bench.tool.flue-gas-analyser.mend',
    ],
    [{ tool: 'strobe', place: 'casing' }, 'wrong-place', 'bench.tool.strobe.mend'],
    [
      { tool: 'thermometer', place: 'casing', range: 'pocket' },
      'wrong-place',
      'bench.mend.use-surface',
    ],
    [
      { tool: 'leak spray', place: 'inlet', other: 'pilot' },
      'other-place',
      'bench.mend.leave-other',
    ],
  ])('names the mend: %j', (use, code, mend) => {
    const issue = checkUse(plant, use);
    expect(issue).toMatchObject({ code, mend: { code: mend } });
    if (issue === null) return;
    // Both speak, with nothing left to fill in.
    expect(`${sayMessage(issue.found)} ${sayMessage(issue.mend)}`).not.toMatch(/[{}]/);
  });

  it('is said of a tool that is in no bag', () => {
    const issue = checkUse(plant, { tool: 'hammer' as ToolUse['tool'], place: 'inlet' });
    expect(issue?.code).toBe('unknown-tool');
  });

  it('is said of a shaft that a direct-driven fan does not have', () => {
    const school = shippedSetup('school-healthy-start').plant;
    expect(checkUse(school, { tool: 'strobe', place: 'motor-shaft' })?.code).toBe('unknown-place');
    expect(checkUse(school, { tool: 'strobe', place: 'fan-shaft' })).toBeNull();
  });
});

describe('a check in the action log', () => {
  it('tells the use it came from, range included', () => {
    for (const { id, ranges } of TOOLS) {
      const use: ToolUse = {
        tool: id,
        place: 'here',
        ...(ranges[1] !== undefined && { range: ranges[1].id }),
      };
      expect(toolUseOf(checkOf(use))).toEqual(use);
    }
    const leads: ToolUse = { tool: 'multimeter', place: 'L1', other: 'N', range: 'ohms' };
    expect(toolUseOf(checkOf(leads))).toEqual(leads);
  });

  it('names the range it came with when none is given, and a look is no use', () => {
    expect(checkOf({ tool: 'multimeter', place: 'L1', other: 'N' }).what).toBe('multimeter: volts');
    expect(toolUseOf({ what: 'sight glass', place: '', other: '' })).toBeNull();
  });
});
