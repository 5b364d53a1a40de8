import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { gunzipSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { cautionOf } from '../../../src/app/guidance/caution-of.ts';
import {
  kindWords,
  nudgeWords,
  whichWords,
  whyLines,
} from '../../../src/app/guidance/hint-words.ts';
import { checkOfWhat } from '../../../src/bench/index.ts';
import { decodeAtlas, partsOfCheck } from '../../../src/diagnosis/index.ts';
import { en } from '../../../src/i18n/en/index.ts';
import { addMessages } from '../../../src/i18n/index.ts';
import { ADVICE, namesOf } from './toy-reasoning.ts';

addMessages(en);
const names = namesOf('drive-current-limited');

function checksOf(plant: string): readonly string[] {
  const file = new URL(`../../../assets/page/atlas/${plant}.atlas`, import.meta.url);
  const atlas = decodeAtlas(gunzipSync(readFileSync(fileURLToPath(file))).toString());
  return [...new Set((atlas?.keys ?? []).map(({ check }) => check))];
}

describe('the rungs of a hint', () => {
  it('tell more from one to the next: a place to think of, a tool, the check, why', () => {
    const nudge = nudgeWords(ADVICE);
    expect(nudge).toContain('gas pressure');
    expect(nudge).not.toMatch(/manometer|strainer|regulator/);
    expect(kindWords(ADVICE)).toContain('manometer');
    expect(kindWords(ADVICE)).not.toContain('strainer');
    expect(whichWords(names, ADVICE)).toMatch(
      /Manometer: gas behind the strainer, during main trial: about 5\smin/,
    );
  });

  it('tell why by what each of the likeliest would let it read, those alike together', () => {
    expect(whyLines(names, ADVICE)).toEqual([
      { parts: 'strainer', said: 'low' },
      { parts: 'gas regulator, upstream valve', said: 'as on a sound plant' },
    ]);
  });

  it('name no moment where there is none', () => {
    expect(whichWords(names, { ...ADVICE, moment: '' })).not.toMatch(/,\s*:/);
  });
});

describe.each(['dairy', 'laundry', 'school'])('every check of the %s', (plant) => {
  const checks = checksOf(plant);

  it('has a nudge and a kind in words', () => {
    const said = checks.flatMap((check) => [
      nudgeWords({ ...ADVICE, check }),
      kindWords({ ...ADVICE, check }),
    ]);
    expect(said.filter((words) => /guide\.|\{|undefined| by eye/.test(words))).toEqual([]);
  });

  it('has a caution that defers to codes and licence where it can hurt someone', () => {
    const risky = checks.filter((check) => {
      const { what, place } = partsOfCheck(check);
      const row = checkOfWhat(what === 'volts' ? 'multimeter: volts' : what, place);
      return what === 'continuity' || (row !== null && row.risk !== 'none');
    });
    expect(risky.length).toBeGreaterThan(20);
    for (const check of risky) expect(cautionOf(check), check).toMatch(/codes.*licence/);
  });

  it('has none where eyes look at what stands open', () => {
    expect(cautionOf('look|gauge glass')).toBeNull();
    expect(cautionOf('history|')).toBeNull();
  });
});
