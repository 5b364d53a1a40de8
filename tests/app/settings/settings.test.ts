import { describe, expect, it } from 'vitest';
import { parseSettings } from '../../../src/app/settings/settings.ts';

const DEFAULTS = { theme: 'system', units: 'SI', sound: true, symbols: 'IEC', shortcuts: true };

describe('settings', () => {
  it.each([null, '', 'not json', '[]', '{"theme":"pink","units":7,"sound":"loud"}', 'null'])(
    'falls back to the defaults for %s',
    (text) => {
      expect(parseSettings(text)).toEqual(DEFAULTS);
    },
  );

  it('takes up what was kept', () => {
    const kept = { theme: 'dark', units: 'US', sound: false, symbols: 'NA', shortcuts: false };
    expect(parseSettings(JSON.stringify(kept))).toEqual(kept);
  });
});
