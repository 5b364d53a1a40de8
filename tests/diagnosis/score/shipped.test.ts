import { describe, expect, it } from 'vitest';
import { type DecisionAct, outcomeOf, reasonAbout } from '../../../src/diagnosis/index.ts';
import { way } from './hand-made.ts';
import { arriveAt, make, shippedCase } from './shipped-cases.ts';

const LONG_MS = 120_000;
const claim = (part: string): DecisionAct => ({ kind: 'claim', part, why: [] });

describe('on shipped atlases', () => {
  it(
    'the best way to a worn scanner sight line costs next to nothing beside itself',
    () => {
      const theCase = shippedCase('laundry-after-the-sweep');
      const { ideal } = reasonAbout(theCase, []);
      const checks = ideal.map(({ check }) => make(theCase, check));
      const found = reasonAbout(theCase, way(arriveAt(theCase), ...checks, claim('scanner')));
      expect(ideal.length).toBeGreaterThan(0);
      expect(found.found).toBe('by readings');
      expect(found.claims[0]?.supported).toBe(true);
      expect(found.path.score).toBeGreaterThan(0.8);
      expect(found.board[0]?.part).toBe('scanner');
      expect(found.board[0]?.speaksFor.length).toBeGreaterThan(0);
    },
    LONG_MS,
  );

  it(
    'a strainer swapped for at once is a good guess, and stays below who looked',
    () => {
      const theCase = shippedCase('dairy-after-the-road-works');
      const arrive = arriveAt(theCase);
      const swap: DecisionAct = { kind: 'work', part: 'strainer', way: 'replace' };
      const lucky = reasonAbout(theCase, way(arrive, swap, claim('strainer')));
      const checks = [make(theCase, 'look|manual cock'), make(theCase, 'manometer|regulated')];
      const slow = [make(theCase, 'look|strainer'), make(theCase, 'look|flue')];
      const looked = reasonAbout(theCase, way(arrive, ...slow, ...checks, claim('strainer')));
      expect(looked.found).toBe('by readings');
      expect(lucky.found).toBe('by trying parts');
      expect(outcomeOf(lucky, false)).toBeLessThan(outcomeOf(looked, false));
      const wild: DecisionAct = { kind: 'suspect', ranked: ['scanner'] };
      const { decisions } = reasonAbout(theCase, way(arrive, wild));
      // The lockout was for gas pressure.
      expect(decisions[1]?.refutedBy.map(({ check }) => check)).toContain('history|');
    },
    LONG_MS,
  );

  it(
    'where only a switch was left wrong, nothing is what is wrong with the plant',
    () => {
      const theCase = shippedCase('dairy-never-gets-to-pressure');
      const checks = [make(theCase, 'watch one start|'), make(theCase, 'look|panel switches')];
      const acts = [arriveAt(theCase), ...checks, claim('nothing')];
      const right: DecisionAct = { kind: 'work', part: 'firing-rate selector', way: 'adjust' };
      const { found, decisions } = reasonAbout(theCase, way(...acts, right));
      expect(found).toBe('by readings');
      expect(decisions.at(-1)?.premature).toBe(false);
      expect(decisions.at(-1)?.regretMinutes).toBeLessThan(1);
    },
    LONG_MS,
  );

  it(
    'comes out the same from the same, to the last digit',
    () => {
      const twice = [0, 1].map(() => {
        const theCase = shippedCase('school-first-frost');
        const checks = [make(theCase, 'look|sight glass'), make(theCase, 'listen|')];
        const acts: DecisionAct[] = [arriveAt(theCase), ...checks, claim('air damper')];
        return JSON.stringify(reasonAbout(theCase, way(...acts)));
      });
      expect(twice[1]).toBe(twice[0]);
    },
    LONG_MS,
  );
});
