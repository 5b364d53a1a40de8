import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { type TimingName, timingParameters } from '../../machines/index.ts';
import { DAIRY, PROFILE_IDS, timingsOf } from './practice.ts';
import { createRig } from './rig.ts';

describe.each(PROFILE_IDS)('%s', (id) => {
  const timings = timingsOf(id);

  it('gives every timing, within its range', () => {
    expect(Object.keys(timings).sort()).toEqual(Object.keys(timingParameters).sort());
    for (const name of Object.keys(timingParameters) as TimingName[]) {
      const parameter = timingParameters[name];
      const value = timings[name];
      if (parameter.kind === 'choice') expect(parameter.options).toContain(value);
      else {
        expect(value).toBeGreaterThanOrEqual(parameter.min);
        expect(value).toBeLessThanOrEqual(parameter.max);
      }
    }
  });
  it('says of every timing where it comes from', () => {
    const file = new URL(`../../scenarios/profiles/${id}.yaml`, import.meta.url);
    const { notes } = parse(readFileSync(file, 'utf8')) as { notes: Record<string, string> };
    expect(Object.keys(notes).sort()).toEqual(Object.keys(timingParameters).sort());
    for (const note of Object.values(notes)) {
      expect(note).toMatch(/own training value|(HIGH|MEDIUM|LOW) certainty/);
    }
  });
  it('leaves room for what has to happen within each limit', () => {
    expect(timings.purgeLimitS).toBeGreaterThan(timings.purgeS);
    expect(timings.prePurgeLimitS).toBeGreaterThan(timings.drivePurgeLimitS + timings.purgeLimitS);
    expect(timings.warmUpLimitS).toBeGreaterThan(timings.lowFireHoldS);
    expect(timings.drivePurgeLimitS).toBeGreaterThan(timings.purgeDwellS);
    expect(timings.driveLightOffLimitS).toBeGreaterThan(timings.lightOffDwellS);
    // The flame relay drops after its response time, and valves take up to a second to close.
    expect(timings.flameOutS).toBeGreaterThan(timings.flameFailureResponseS + 1);
    expect(timings.resetWindowS).toBeGreaterThan(timings.repeatedResets * timings.resetPressS);
  });
  it('lets a pilot or main trial be no longer than the practice it follows', () => {
    expect(timings.pilotTrialS).toBeLessThanOrEqual(id === 'process-heater' ? 15 : 10);
    expect(timings.mainTrialS).toBeLessThanOrEqual(
      id === 'european-forced-draught-burner' ? 3 : 15,
    );
    expect(timings.flameFailureResponseS).toBeLessThanOrEqual(
      id === 'european-forced-draught-burner' ? 1 : 4,
    );
  });
  it('starts a plant that does at once what is waited for', () => {
    const rig = createRig(DAIRY, timings);
    rig.reach('modulation');
    expect(rig.clock.nowMs / 1000).toBeGreaterThan(60);
    expect(rig.clock.nowMs / 1000).toBeLessThan(240);
  });
});
