import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { gunzipSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { INPUTS } from '../../machines/burner/index.ts';
import { testPointsOf } from '../../src/bench/index.ts';
import { type Atlas, decodeAtlas } from '../../src/diagnosis/index.ts';
import { createRun, type Run } from '../../src/engine/index.ts';
import { en } from '../../src/i18n/en/index.ts';
import { addMessages } from '../../src/i18n/index.ts';
import {
  answerWords,
  checkWords,
  momentWords,
  type Names,
  partShareWords,
  toldWords,
} from '../../src/wording/index.ts';
import { library, shippedSetup } from '../support/library.ts';

addMessages(en);

const PLANTS = ['dairy', 'laundry', 'school'];

function atlasOf(plant: string): Atlas {
  const file = new URL(`../../assets/page/atlas/${plant}.atlas`, import.meta.url);
  const atlas = decodeAtlas(gunzipSync(readFileSync(fileURLToPath(file))).toString());
  if (atlas === null) throw new Error(`no atlas of ${plant}`);
  return atlas;
}

function runOf(plant: string): Run {
  const scenario = library.scenarios.find((each) => each.plant === plant);
  if (scenario === undefined) throw new Error(`no start of ${plant}`);
  return createRun(shippedSetup(scenario.id));
}

function namesOf(plant: string): Names {
  const { setup, channels } = runOf(plant);
  return {
    testPoints: [...testPointsOf(setup.plant)],
    inputs: [...INPUTS],
    channels: channels.map((channel) => ({ ...channel })),
  };
}

/** Words with a hyphen that people use, in sentences or in the name of a part; any other is an id. */
const HYPHENED = new Set(
  [
    ...Object.values(en),
    ...PLANTS.flatMap((plant) =>
      runOf(plant)
        .settings()
        .flatMap(({ part, setting }) => [part, setting]),
    ),
  ].flatMap((words) => words.toLowerCase().match(/[a-z]+(?:-[a-z]+)+/g) ?? []),
);

function rawPiecesOf(words: string): readonly string[] {
  return [
    ...(words.match(/[a-z][A-Z]\w*|\w*[|@#{}+]\w*|\b[a-z]+\.[a-z]\S*|:[12]\b|\bundefined\b/g) ??
      []),
    ...(words.toLowerCase().match(/[a-z]+(?:-[a-z]+)+/g) ?? []).filter(
      (word) => !HYPHENED.has(word),
    ),
    ...(words.trim() === '' ? ['nothing at all'] : []),
  ];
}

describe.each(PLANTS)('words for what can be found out at the %s', (plant) => {
  const names = namesOf(plant);
  const { keys } = atlasOf(plant);

  it('are there for every check and every moment, with no raw id in them', () => {
    const said = new Set(
      keys.flatMap(({ check, moment }) => [checkWords(names, check), momentWords(moment)]),
    );
    expect(said.size).toBeGreaterThan(100);
    expect([...said].filter((words) => rawPiecesOf(words).length > 0)).toEqual([]);
  });

  it('are there for every answer to every one of them', () => {
    const said = new Set(
      keys.flatMap(({ check, aspect, bins }) =>
        bins.map((word) => answerWords(names, { check, aspect, word })),
      ),
    );
    expect(said.size).toBeGreaterThan(100);
    expect([...said].filter((words) => rawPiecesOf(words).length > 0)).toEqual([]);
  });

  it('tell the answers of one key apart', () => {
    const alike = keys
      .map(({ check, aspect, bins }) => ({
        key: `${check} ${aspect}`,
        words: bins.map((word) => answerWords(names, { check, aspect, word })),
      }))
      .filter(({ words }) => new Set(words).size < words.length);
    expect(alike).toEqual([]);
  });

  it('tell two checks apart', () => {
    const checks = [...new Set(keys.map(({ check }) => check))];
    const byWords = new Map<string, string[]>();
    for (const check of checks) {
      const words = checkWords(names, check);
      byWords.set(words, [...(byWords.get(words) ?? []), check]);
    }
    expect([...byWords].filter(([, same]) => same.length > 1)).toEqual([]);
  });
});

describe('a reading in words', () => {
  const names = namesOf('dairy');

  it('has its number in the reader’s unit, and its moment', () => {
    const told = {
      check: 'manometer|regulated|',
      moment: 'main trial',
      aspect: 'value',
      word: 'low',
      value: 1230,
    };
    expect(toldWords(names, told)).toBe(
      'Manometer: gas behind the regulator, during main trial – low (12.3 mbar)',
    );
    expect(toldWords(names, told, 'US')).toContain('inWC');
  });

  it('names a terminal of the controller as the panel does', () => {
    const told = {
      check: 'watch one start|',
      moment: 'purge',
      aspect: `input ${INPUTS.indexOf('airProved')}`,
      word: 'open',
    };
    expect(toldWords(names, told)).toBe('The panel, during purge – air switch open');
  });

  it('puts what eyes could give a number to as they saw it', () => {
    const told = {
      check: 'look|strainer',
      moment: 'standing',
      aspect: 'closedShare',
      word: 'high',
      value: 0.7,
    };
    expect(toldWords(names, told)).toContain('high (about 70 % of it closed)');
  });

  it('says where a start never came to the step', () => {
    const told = { check: 'manometer|flue|', aspect: 'value', word: 'not reached' };
    expect(answerWords(names, told)).toContain('does not come that far');
  });

  it('says a share in per cent, and “nothing” as what it means', () => {
    expect(partShareWords({ part: 'strainer', share: 0.624 })).toBe('strainer, 62 %');
    expect(partShareWords({ part: 'nothing', share: 0 })).toContain('nothing wrong');
  });
});
