import { describe, expect, it } from 'vitest';
import { PANEL_CHANNELS, sheetOf } from '../../../src/bench/index.ts';
import { createRun } from '../../../src/engine/index.ts';
import { sayMessage } from '../../../src/i18n/index.ts';
import { shippedSetup } from '../../support/library.ts';
import { sound, withFault } from './visit.ts';

const STARTS = ['healthy-start', 'laundry-healthy-start', 'school-healthy-start'];

describe('the commissioning sheet', () => {
  it('is that of the sound plant, whatever is wrong with it', () => {
    const faulty = sheetOf(withFault('airflow switch set too high', 3));
    expect(faulty).toEqual(sheetOf(sound));
  });
  it.each(STARTS)('of %s goes from rest to full fire, and says each line once', (id) => {
    const rows = sheetOf(shippedSetup(id));
    const said = rows.map(({ what }) => sayMessage(what));
    expect(new Set(said).size).toBe(said.length);
    expect(said.filter((line) => line.includes('{'))).toEqual([]);
    const codes = new Set(rows.map(({ what }) => what.code.split('.')[2]));
    for (const when of ['rest', 'purge', 'light-off', 'low-fire', 'full-fire', 'setting']) {
      expect(codes, when).toContain(when);
    }
  });
  it('has figures that a burner in order has', () => {
    const rows = sheetOf(sound);
    const value = (line: string) => rows.find(({ what }) => sayMessage(what) === line)?.value ?? 0;
    // The sheet's plant burns with a sixth to a fifth more air than just enough: 3 to 5 % oxygen.
    expect(value('Full fire: oxygen in the flue gas')).toBeGreaterThan(0.025);
    expect(value('Full fire: oxygen in the flue gas')).toBeLessThan(0.05);
    expect(value('Full fire: gas pressure at the nozzle')).toBeGreaterThan(
      5 * value('Low fire: gas pressure at the nozzle'),
    );
    expect(value('In purge: fan speed')).toBeCloseTo(1760, 0);
    expect(value('airflow switch: switch point')).toBe(50);
  });
});

describe('the panel', () => {
  it('shows channels that the plants have, and none that only the simulator knows', () => {
    const channels = STARTS.flatMap((id) => createRun(shippedSetup(id)).channels);
    const known = new Map(channels.map((channel) => [channel.id, channel.part]));
    expect(PANEL_CHANNELS.filter((id) => known.get(id) !== 'visible')).toEqual([]);
  });
  it('shows nothing for which a tool is in the bag', () => {
    const measured =
      /pressure$|flame\.signal|flue\.|analyser\.|wiring\.|current|opening|blade|shaft/;
    expect(PANEL_CHANNELS.filter((id) => measured.test(id))).toEqual([]);
  });
});
