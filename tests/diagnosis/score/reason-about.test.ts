import { describe, expect, it } from 'vitest';
import {
  afterRepair,
  afterSeeing,
  causeShares,
  type DecisionAct,
  outcomeOf,
  priorBelief,
  reasonAbout,
  sharesOf,
} from '../../../src/diagnosis/index.ts';
import { ARRIVED, caseFrom, read, reasonOn, saw, way } from './hand-made.ts';

const GAUGE = 'manometer|inlet';
const FAN = 'strobe|fan';
const EYE = 'listen|';
const STRAINER = 'strainer blocked';
const SCANNER = 'scanner off sight line';
const TRANSFORMER = 'ignition transformer dead';

/** Three faults of the catalogue and a sound plant, each with one sign of its own. */
const columns = [{ check: GAUGE }, { check: FAN }, { check: EYE }];
const rows = [
  { fault: null, plants: [['in band', 'in band', 'none']] },
  { fault: STRAINER, plants: [['low', 'in band', 'none']] },
  { fault: SCANNER, plants: [['in band', 'low', 'none']] },
  { fault: TRANSFORMER, plants: [['in band', 'in band', 'loud']] },
];
const blocked = () => caseFrom(columns, rows, [STRAINER]);

const CLEAN: DecisionAct = { kind: 'work', part: 'strainer', way: 'clean' };
const NEW_SCANNER: DecisionAct = { kind: 'work', part: 'scanner', way: 'replace' };
const claim = (part: string, ...why: readonly string[]): DecisionAct => ({
  kind: 'claim',
  part,
  why: why.map((check) => ({ check, moment: 'lockout' })),
});
const LOW = read(GAUGE, 'low');

describe('what is known on the way', () => {
  it('follows the rule of agreement and surprise, by the part that is mended', () => {
    const { board } = reasonOn(blocked(), ARRIVED, LOW);
    // One agrees at 0.98, three differ at 0.02 each: one other word is there.
    expect(board[0]).toMatchObject({ part: 'strainer' });
    expect(board[0]?.share).toBeCloseTo(0.98 / (0.98 + 3 * 0.02), 9);
  });

  it('counts a reading once, however often it is looked at', () => {
    const once = reasonOn(blocked(), ARRIVED, LOW);
    const thrice = reasonOn(blocked(), ARRIVED, LOW, LOW, LOW);
    expect(thrice.board).toEqual(once.board);
  });

  it('keeps the sign where the same thing is once as it should be and once not', () => {
    const sign = reasonOn(blocked(), ARRIVED, LOW);
    const both = reasonOn(blocked(), ARRIVED, read(GAUGE, 'in band'), LOW, read(GAUGE, 'in band'));
    expect(both.board[0]?.share).toBeCloseTo(sign.board[0]?.share ?? 0, 9);
  });

  it('what work mends goes over to nothing wrong, and is read anew', () => {
    const theCase = blocked();
    const mended = reasonOn(theCase, ARRIVED, LOW, CLEAN);
    const share = 0.98 / (0.98 + 3 * 0.02);
    const others = (0.02 * 1) / (0.98 + 3 * 0.02);
    expect(mended.board[0]).toMatchObject({ part: 'nothing' });
    // A twentieth of it may be a second fault behind the first: a quarter each, but not the same again.
    const gone = 0.98 * share;
    const sound = others + gone * (0.95 + 0.05 / 4);
    expect(mended.board[0]?.share).toBeCloseTo(sound / (1 - (gone * 0.05) / 4), 9);
    const still = reasonOn(theCase, ARRIVED, LOW, CLEAN, read(GAUGE, 'low'));
    // It is as low as it was: the repair has not taken.
    expect(still.board[0]?.share).toBeLessThan(mended.board[0]?.share ?? 0);
  });

  it('work on something else leaves what was known', () => {
    const before = reasonOn(blocked(), ARRIVED, LOW);
    const after = reasonOn(blocked(), ARRIVED, LOW, NEW_SCANNER);
    const shareOf = (board: typeof before.board) =>
      board.find(({ part }) => part === 'strainer')?.share;
    expect(shareOf(after.board)).toBeCloseTo(shareOf(before.board) ?? 0, 9);
  });

  it('repairs move shares and lose none', () => {
    const { atlas } = blocked();
    const seen = afterSeeing(priorBelief(atlas), atlas, [{ key: 0, bin: 1 }]);
    const before = causeShares(atlas, sharesOf(seen));
    const after = causeShares(
      atlas,
      sharesOf(afterRepair(seen, atlas, (fault) => fault === STRAINER)),
    );
    expect(after.reduce((a, b) => a + b, 0)).toBeCloseTo(1, 12);
    // A twentieth of it may be a second fault behind the first.
    const gone = 0.98 * (before[1] ?? 0);
    const all = 1 - (gone * 0.05) / 4;
    expect(after[2]).toBeCloseTo(((before[2] ?? 0) + (gone * 0.05) / 4) / all, 12);
    expect(after[0]).toBeCloseTo(((before[0] ?? 0) + gone * (0.95 + 0.05 / 4)) / all, 12);
  });

  it('takes what it does not know without a word', () => {
    const odd = reasonOn(
      blocked(),
      read('decay test|', 'x'),
      { kind: 'check', check: 'no such tool|nowhere', seen: [] },
      { kind: 'watch', seen: [] },
      { kind: 'suspect', ranked: ['no such part'] },
      { kind: 'suspect', ranked: [] },
      { kind: 'work', part: 'no such part', way: 'replace' },
      claim('no such part', 'no such check|'),
      { kind: 'withdraw' },
      { kind: 'withdraw' },
    );
    expect(odd.found).toBe('not found');
    expect(reasonAbout(blocked(), []).decisions).toEqual([]);
    expect(reasonAbout(caseFrom(columns, rows, ['no such fault']), way(ARRIVED)).found).toBe(
      'not found',
    );
  });
});

describe('what a decision is told of itself', () => {
  it('a question to people costs two minutes, and nothing but those the second time', () => {
    const ask: DecisionAct = { kind: 'ask', topic: 'since when' };
    const { decisions } = reasonOn(blocked(), ARRIVED, ask, ask);
    expect(decisions[1]).toMatchObject({ minutes: 2, redundant: false, regretMinutes: 0 });
    expect(decisions[2]).toMatchObject({ redundant: true });
  });

  it('work on a guess costs what it would waste: its time and parts by how unlikely it is', () => {
    const { decisions } = reasonOn(blocked(), ARRIVED, CLEAN);
    // Forty minutes; one cause of four.
    expect(decisions[1]).toMatchObject({ premature: true, minutes: 40 });
    expect(decisions[1]?.regretMinutes).toBeCloseTo(40 * 0.75, 9);
    const known = reasonOn(blocked(), ARRIVED, LOW, CLEAN).decisions[2];
    expect(known?.premature).toBe(false);
    expect(known?.regretMinutes).toBeCloseTo((40 * 3 * 0.02) / (0.98 + 3 * 0.02), 9);
  });

  it('whether a swap helps does not change its regret', () => {
    const wrong = reasonOn(caseFrom(columns, rows, [TRANSFORMER]), ARRIVED, LOW, NEW_SCANNER);
    const right = reasonOn(caseFrom(columns, rows, [SCANNER]), ARRIVED, LOW, NEW_SCANNER);
    expect(right.decisions[2]?.regretMinutes).toBe(wrong.decisions[2]?.regretMinutes);
    // A new scanner costs five units of an hour each.
    expect(right.decisions[2]?.regretMinutes).toBeGreaterThan(250);
  });

  it('names the reading that had ruled a suspect out, and none where nothing had', () => {
    const suspect: DecisionAct = { kind: 'suspect', ranked: ['scanner', 'strainer'] };
    const { decisions } = reasonOn(blocked(), ARRIVED, suspect, LOW, read(FAN, 'in band'), suspect);
    expect(decisions[1]?.refutedBy).toEqual([]);
    expect(decisions[4]?.refutedBy.map(({ check, word }) => [check, word])).toContainEqual([
      FAN,
      'in band',
    ]);
  });

  it('says what was not as on a sound plant', () => {
    const { decisions } = reasonOn(blocked(), ARRIVED, LOW, read(FAN, 'in band'));
    expect(decisions[1]?.told).toEqual([
      { check: GAUGE, moment: 'lockout', aspect: 'value', value: 'low', word: 'low' },
    ]);
    expect(decisions[2]?.told).toEqual([]);
  });

  it('waiting for a step is charged to the start that is watched, not to what hangs on meanwhile', () => {
    const moment = 'pilot trial';
    const theCase = caseFrom(
      [
        { check: GAUGE, moment },
        { check: EYE, moment },
        { check: 'watch one start|', moment, aspect: 'duration' },
      ],
      [
        { fault: null, plants: [['in band', 'none', 'in band']] },
        { fault: STRAINER, plants: [['low', 'none', 'in band']] },
        { fault: SCANNER, plants: [['in band', 'loud', 'in band']] },
        { fault: TRANSFORMER, plants: [['in band', 'none', 'low']] },
      ],
      [],
      null,
      { [moment]: 150 },
    );
    const alone = reasonOn(theCase, ARRIVED, read(GAUGE, 'low', moment));
    expect(alone.decisions[1]?.minutes).toBeCloseTo(3 + 0.5 + 2.5, 9);
    const watched = reasonOn(
      theCase,
      ARRIVED,
      read(GAUGE, 'low', moment),
      read(EYE, 'none', moment),
      {
        kind: 'watch',
        seen: [saw(GAUGE, 'low', moment), { moment, readings: [] }],
      },
    );
    expect(watched.decisions.map(({ minutes }) => minutes)).toEqual([0, 3, 1, 3]);
    expect(watched.decisions[3]).toMatchObject({ redundant: false });
  });

  it('proving a repair is no search: it is neither redundant nor regretted', () => {
    const { decisions } = reasonOn(blocked(), ARRIVED, LOW, CLEAN, read(GAUGE, 'in band'), {
      kind: 'check',
      check: FAN,
      seen: [saw(FAN, 'in band')],
    });
    for (const one of decisions.slice(3)) {
      expect(one).toMatchObject({ redundant: false, regretMinutes: 0 });
    }
  });
});

describe('claims', () => {
  it('are supported by readings, not by being common', () => {
    const common = caseFrom(
      columns,
      rows.map((row) => ({ ...row, priorWeight: row.fault === STRAINER ? 20 : 1 })),
      [STRAINER],
    );
    const [guess] = reasonOn(common, ARRIVED, claim('strainer')).claims;
    expect(guess?.share).toBeCloseTo(20 / 23, 9);
    expect(guess?.supported).toBe(false);
    expect(reasonOn(common, ARRIVED, LOW, claim('strainer')).claims[0]?.supported).toBe(true);
  });

  it('weigh their pins: for, against, or neither', () => {
    const { claims } = reasonOn(
      blocked(),
      ARRIVED,
      LOW,
      read(FAN, 'in band'),
      claim('strainer', GAUGE),
      claim('scanner', GAUGE, FAN, 'never looked|'),
    );
    expect(claims[0]?.pins).toEqual({ speakingFor: 1, against: 0, neutral: 0 });
    expect(claims[1]?.pins).toEqual({ speakingFor: 0, against: 2, neutral: 1 });
  });

  it('an unsupported one costs what it would still have taken to know', () => {
    const { decisions } = reasonOn(blocked(), ARRIVED, claim('strainer'), LOW, claim('strainer'));
    expect(decisions[1]).toMatchObject({ premature: true });
    expect(decisions[1]?.regretMinutes).toBeGreaterThan(1);
    expect(decisions[3]).toMatchObject({ premature: false, regretMinutes: 0 });
  });

  it('that nothing is wrong is one like any other', () => {
    const sound = caseFrom(columns, rows, []);
    const all = [read(GAUGE, 'in band'), read(FAN, 'in band'), read(EYE, 'none')];
    const shown = reasonOn(sound, ARRIVED, ...all, claim('nothing'));
    expect(shown.claims[0]?.supported).toBe(true);
    expect(shown.found).toBe('by readings');
    expect(reasonOn(sound, ARRIVED, claim('nothing')).found).toBe('by trying parts');
    expect(reasonOn(sound, ARRIVED, ...all, claim('strainer')).found).toBe('not found');
  });
});

describe('how the cause was come by', () => {
  const found = (...acts: readonly DecisionAct[]) => reasonOn(blocked(), ARRIVED, ...acts).found;

  it('by readings where they had shown it, whether claimed or mended first', () => {
    expect(found(LOW, claim('strainer'))).toBe('by readings');
    expect(found(LOW, CLEAN, claim('strainer'))).toBe('by readings');
    expect(found(LOW, CLEAN)).toBe('by readings');
  });

  it('that a repair helped is no reading', () => {
    const runs = [read(GAUGE, 'in band'), read(FAN, 'in band'), read(EYE, 'none')];
    expect(found(CLEAN, ...runs, claim('strainer'))).toBe('by trying parts');
    expect(found(NEW_SCANNER, CLEAN, ...runs, claim('strainer'))).toBe('by trying parts');
    expect(found(claim('strainer'))).toBe('by trying parts');
  });

  it('to try parts one by one until nothing else is left is no reading either', () => {
    const still: DecisionAct = { kind: 'watch', seen: [saw(GAUGE, 'low')] };
    const tried = [NEW_SCANNER, still, CLEAN, claim('strainer')];
    expect(found(...tried)).toBe('by trying parts');
    // Who looks for himself after a guess is back to reading.
    expect(found(NEW_SCANNER, still, read(EYE, 'none'), read(FAN, 'in band'), CLEAN)).toBe(
      'by readings',
    );
  });

  it('not at all where nothing right was claimed or done, or it was taken back', () => {
    expect(found(LOW, claim('scanner'), NEW_SCANNER)).toBe('not found');
    expect(found(LOW, claim('strainer'), { kind: 'withdraw' })).toBe('not found');
  });

  it('each of several faults has to be come by', () => {
    const signs = rows.map((row) =>
      row.fault === TRANSFORMER ? { ...row, plants: [['in band', 'high', 'loud']] } : row,
    );
    const two = caseFrom(columns, signs, [STRAINER, TRANSFORMER]);
    const first = [LOW, claim('strainer'), CLEAN];
    expect(reasonOn(two, ARRIVED, ...first).found).toBe('not found');
    // After a repair something else is rare: it takes more than one sign.
    const second = [read(EYE, 'loud'), read(FAN, 'high'), claim('ignition transformer')];
    const both = reasonOn(two, ARRIVED, ...first, ...second);
    expect(both.found).toBe('by readings');
  });

  it('what no permitted check tells apart is taken for it', () => {
    const alike = caseFrom(
      columns,
      [...rows, { fault: 'regulator creeps', plants: [['low', 'in band', 'none']] }],
      [STRAINER],
    );
    const { claims, found } = reasonOn(alike, ARRIVED, LOW, claim('gas regulator'));
    expect(claims[0]?.share).toBeGreaterThan(0.9);
    expect(found).toBe('by readings');
  });

  it('a lucky part-swapper never comes out above who knew, and unsafe is below all', () => {
    const supported = reasonOn(
      blocked(),
      ARRIVED,
      ...Array.from({ length: 9 }, () => read(FAN, 'in band')),
      LOW,
      claim('strainer'),
    );
    const lucky = reasonOn(blocked(), ARRIVED, CLEAN, claim('strainer'));
    const lost = reasonOn(blocked(), ARRIVED);
    expect(outcomeOf(lucky, false)).toBeLessThan(outcomeOf(supported, false));
    expect(outcomeOf(lucky, false)).toBeGreaterThan(outcomeOf(lost, false) - 1e-9);
    expect(outcomeOf(supported, true)).toBeLessThanOrEqual(0.1);
    expect(outcomeOf(supported, true)).toBeLessThan(outcomeOf(lucky, false));
  });
});

describe('board and advice', () => {
  it('says what speaks for and against each suspect', () => {
    const suspect: DecisionAct = { kind: 'suspect', ranked: ['scanner'] };
    const { board } = reasonOn(blocked(), ARRIVED, suspect, LOW, read(FAN, 'in band'));
    const line = (part: string) => board.find((one) => one.part === part);
    expect(line('strainer')?.speaksFor.map(({ check }) => check)).toEqual([GAUGE]);
    expect(line('strainer')?.speaksAgainst).toEqual([]);
    expect(line('scanner')?.speaksFor).toEqual([]);
    expect(line('scanner')?.speaksAgainst.map(({ check }) => check)).toContain(FAN);
  });

  it('advises what is worth its time, and says how the likeliest would read', () => {
    const { next } = reasonOn(blocked(), ARRIVED);
    expect(next.map(({ check }) => check).sort()).toEqual([EYE, GAUGE, FAN].sort());
    const gauge = next.find(({ check }) => check === GAUGE);
    const words = new Map(gauge?.splits.map(({ part, word }) => [part, word]));
    expect(words.get('strainer')).toBe('low');
    expect(words.get('scanner')).toBe('in band');
    const knowing = reasonOn(blocked(), ARRIVED, LOW, read(FAN, 'in band'), read(EYE, 'none'));
    expect(knowing.next).toEqual([]);
  });

  it('holds rankings against the shares: same order nought, reversed one', () => {
    const ranked = (...parts: readonly string[]): DecisionAct => ({
      kind: 'suspect',
      ranked: parts,
    });
    const parts = ['strainer', 'scanner', 'ignition transformer', 'nothing'];
    const right = reasonOn(blocked(), ARRIVED, LOW, ranked(...parts)).calibration;
    const wrong = reasonOn(blocked(), ARRIVED, LOW, ranked(...parts.toReversed())).calibration;
    expect(right).toMatchObject({ rankings: 1, distance: 0 });
    expect(right?.firstShare).toBeCloseTo(0.98 / 1.04, 9);
    expect(wrong?.distance).toBeCloseTo(1, 9);
    expect(reasonOn(blocked(), ARRIVED, LOW).calibration).toBeNull();
  });
});

describe('moments worth going back to', () => {
  it('are three to five, in the order of time, never two about the same', () => {
    const acts: DecisionAct[] = [
      read(FAN, 'in band'),
      read(FAN, 'in band'),
      { kind: 'ask', topic: 'habits' },
      NEW_SCANNER,
      NEW_SCANNER,
      claim('ignition transformer'),
      { kind: 'withdraw' },
      LOW,
      claim('strainer'),
      CLEAN,
    ];
    const { moments, decisions } = reasonOn(blocked(), ARRIVED, ...acts);
    expect(moments.length).toBeGreaterThanOrEqual(3);
    expect(moments.length).toBeLessThanOrEqual(5);
    expect([...moments].sort((a, b) => a - b)).toEqual(moments);
    const whats = moments.map((i) => decisions[i]?.what);
    expect(new Set(whats).size).toBe(whats.length);
    const regrets = decisions.map(({ regretMinutes }) => regretMinutes);
    expect(moments).toContain(regrets.indexOf(Math.max(...regrets)));
  });

  it('are those that told most where nothing was to be regretted', () => {
    const acts = [LOW, claim('strainer'), CLEAN];
    const { moments } = reasonOn(blocked(), ARRIVED, { kind: 'ask', topic: 'habits' }, ...acts);
    expect(moments).toContain(2);
    expect(moments).toHaveLength(3);
  });
});
