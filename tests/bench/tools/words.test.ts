import { describe, expect, it } from 'vitest';
import {
  flagMessage,
  heardWords,
  lookPlaceName,
  lookWords,
  type Message,
  shownIn,
  TOOL_FLAGS,
  TOOLS,
} from '../../../src/bench/index.ts';
import { createRun, HEARD_WHATS, LOOK_WHATS, LOOK_WORDS } from '../../../src/engine/index.ts';
import { sayMessage } from '../../../src/i18n/index.ts';
import { shippedSetup } from '../../support/library.ts';

/** Said, and with nothing left to fill in. An unknown code throws. */
function speaks(said: Message): void {
  expect(sayMessage(said)).not.toMatch(/[{}]|undefined|NaN/);
}

describe('what the bench says', () => {
  it('has a sentence for every tool, range, caution and flag', () => {
    for (const { name, measures, ranges, caution } of TOOLS) {
      for (const said of [name, measures, ...ranges.map((range) => range.name)]) speaks(said);
      if (caution !== null) speaks(caution);
    }
    for (const flag of TOOL_FLAGS) speaks(flagMessage(flag));
  });

  it('has a sentence for every place that can be looked at, every word seen, every sound', () => {
    for (const what of LOOK_WHATS) speaks(lookPlaceName(what));
    for (const code of LOOK_WORDS) speaks({ code });
    for (const what of HEARD_WHATS) {
      for (const loudness of [0.1, 0.4, 0.9]) {
        for (const said of heardWords([{ what, loudness }])) speaks(said);
      }
    }
    for (const said of heardWords([])) speaks(said);
  });

  it.each(['laundry-healthy-start', 'healthy-start', 'school-healthy-start'])(
    'speaks of all that eyes find during %s',
    (start) => {
      const run = createRun(shippedSetup(start));
      for (const tS of [1, 40, 150]) {
        run.advanceTo(tS);
        for (const what of run.lookPlaces()) {
          const look = run.look(what);
          const said = look === null ? [] : lookWords(look);
          expect(said.length).toBeGreaterThan(0);
          for (const sentence of said) speaks(sentence);
        }
      }
    },
  );

  it('puts numbers as an eye has them: level, hand rate, cocks, broken fuses', () => {
    const say = (
      what: (typeof LOOK_WHATS)[number],
      values: Record<string, number>,
      words: readonly (typeof LOOK_WORDS)[number][] = [],
    ) => lookWords({ what, values, words, needsOpening: false }).map(sayMessage);
    expect(say('gauge glass', { levelM: -0.05 })).toEqual([
      'Level 50 mm (2.0 in) below the middle.',
    ]);
    expect(say('panel switches', { handRateShare: 0.4 }, ['look.panel.hand'])).toEqual([
      'Firing rate: by hand.',
      'The hand rate is at 40 %.',
    ]);
    expect(say('panel switches', { handRateShare: 0.4 }, ['look.panel.automatic'])).toHaveLength(1);
    expect(say('manual cock', { cock: 0.5 })).toEqual(['cock: 50 % open.']);
    expect(say('fuses', { 'control-fuse': 0, spare: 1 })).toEqual(['Broken: control-fuse.']);
    expect(say('fuses', { 'control-fuse': 1 })).toEqual([]);
    expect(say('terminal strip', { 'L1+33': 1, '20+21': 2, 'high-limit:1': 1 })).toEqual([
      'Jumper: from wire L1 to wire 33.',
      '2 jumpers: from wire 20 to wire 21.',
      'Out of its terminal: high limit, terminal 1.',
    ]);
  });
});

describe('a display in other units', () => {
  it.each([
    [{ value: 10000, kind: 'gas pressure', unit: 'mbar', shown: '100.0' }, '40.1 inWC'],
    [{ value: 493.15, kind: 'temperature', unit: '°C', shown: '220.0' }, '428.0 °F'],
    [{ value: 0.035, kind: 'gas share', unit: '%', shown: '3.5' }, '3.5 %'],
    [{ value: null, kind: 'gas pressure', unit: 'mbar', shown: 'OL' }, 'OL mbar'],
    [{ value: 119.5, kind: null, unit: 'V', shown: '119.5' }, '119.5 V'],
  ] as const)('%j is %s', (line, expected) => {
    const { shown, unit } = shownIn(line, 'US');
    expect(`${shown} ${unit}`).toBe(expected);
    expect(shownIn(line, 'SI')).toEqual({ shown: line.shown, unit: line.unit });
  });
});
