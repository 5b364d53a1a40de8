import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import {
  ARRIVE,
  at,
  CALL,
  check,
  handOver,
  judge,
  lock,
  madeDead,
  repair,
  rulesOf,
  supply,
  volts,
  withFault,
} from './visit.ts';

const here = new URL('.', import.meta.url);
const bench = new URL('../../../src/bench/conduct/', here);
const written = readFileSync(new URL('CONDUCT.md', bench), 'utf8');
const rules = [...written.matchAll(/^\| (SC-\d+) +\|/gm)].map(([, rule]) => rule as string);

function textOf(folder: URL, ending: string): string {
  return readdirSync(folder)
    .filter((file) => file.endsWith(ending))
    .map((file) => readFileSync(new URL(file, folder), 'utf8'))
    .join('\n');
}

describe('the rules of conduct', () => {
  it('have each number once', () => {
    expect(rules).toHaveLength(new Set(rules).size);
    expect(rules.length).toBeGreaterThanOrEqual(18);
  });
  it('are exactly those that findings name', () => {
    const named = new Set([...textOf(bench, '.ts').matchAll(/'(SC-\d+)'/g)].map(([, one]) => one));
    expect([...named].sort()).toEqual([...rules].sort());
  });
  it('head the title of a test each', () => {
    const tests = textOf(here, '.test.ts');
    expect(rules.filter((rule) => !tests.includes(`[${rule}]`))).toEqual([]);
  });
});

describe('good work', () => {
  it('a start watched with a meter on is clean', () => {
    const log = [
      CALL,
      volts(2, 'L1'),
      check(3, 'manometer: mid', 'regulated'),
      check(240, 'look', 'sight glass'),
    ];
    expect(judge({ log, desk: [ARRIVE, handOver(300)] })).toEqual([]);
  });
  it('a repair isolated, locked, proved dead, put back and proved by a start is clean', () => {
    const setup = withFault('upstream valve coil open', 1);
    const log = [
      ...madeDead(10),
      repair(13, 'upstream valve coil', 'replace'),
      lock(14, 'isolator', false),
      supply(15, true),
      { ...CALL, t: 20 },
    ];
    expect(rulesOf({ setup, log, desk: [ARRIVE, handOver(330)] })).toEqual([]);
  });
  it('is judged the same each time', () => {
    const log = [CALL, repair(50, 'fan belt', 'tighten'), at(60, { type: 'reset', pressed: true })];
    expect(judge({ log })).toEqual(judge({ log }));
  });
});
