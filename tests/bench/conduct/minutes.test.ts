import { describe, expect, it } from 'vitest';
import type { DeskEntry } from '../../../machines/index.ts';
import { CHECKS, minutesOf, TOOLS } from '../../../src/bench/index.ts';
import { createRun, type TimedAction } from '../../../src/engine/index.ts';
import { sayMessage } from '../../../src/i18n/index.ts';
import { ARRIVE, at, check, repair, sound, supply, volts } from './visit.ts';

const parts = createRun(sound).parts();
function minutes(log: readonly TimedAction[], timeS = 60, desk: readonly DeskEntry[] = [ARRIVE]) {
  const used = minutesOf(log, desk, parts, timeS);
  for (const { what } of used.lines) expect(sayMessage(what)).not.toMatch(/[{}]/);
  return used;
}
/** Without the minute that the plant has run. */
function tariffOf(log: readonly TimedAction[]): number {
  return minutes(log).total - 1;
}
const of = (what: string) => CHECKS.find((one) => one.what === what)?.minutes ?? Number.NaN;

describe('minutes', () => {
  it('are those of the plant and of the work, and add up over the lines', () => {
    const log = [supply(5, false), volts(8, 'L1'), repair(9, 'fan contactor', 'replace')];
    const { total, lines } = minutes(log, 120);
    expect(total).toBeCloseTo(2 + 1 + of('multimeter: volts') + 30, 9);
    expect(total).toBeCloseTo(
      lines.reduce((sum, line) => sum + line.minutes, 0),
      9,
    );
  });
  it('begin with the arrival', () => {
    const desk: DeskEntry[] = [{ t: 300, type: 'arrive', tools: [] }];
    expect(minutes([volts(100, 'L1')], 360, desk).total).toBeCloseTo(1, 9);
  });
  it('charge a new part, not the work of cleaning one', () => {
    const costs = (way: 'replace' | 'clean') =>
      minutes([repair(9, 'fan contactor', way)]).lines.reduce((sum, { cost }) => sum + cost, 0);
    expect(costs('replace')).toBeGreaterThan(0);
    expect(costs('clean')).toBe(0);
  });
  it('charge the same leads on the same places once, other places again', () => {
    const one = of('multimeter: volts');
    expect(tariffOf([volts(5, 'L1'), volts(9, 'L1'), volts(40, 'L1')])).toBeCloseTo(one, 9);
    expect(tariffOf([volts(5, 'L1'), volts(9, '24')])).toBeCloseTo(2 * one, 9);
    const ranges = [volts(5, 'L1'), check(9, 'multimeter: ohms', 'L1', 'N')];
    expect(tariffOf(ranges)).toBeCloseTo(one + of('multimeter: ohms'), 9);
  });
  it('charge leak spray again after something was repaired', () => {
    const spray = (t: number) => check(t, 'leak spray', 'inlet');
    const again = tariffOf([spray(5), repair(6, 'strainer joint', 'tighten'), spray(7)]);
    expect(again).toBeCloseTo(2 * of('leak spray') + 20, 9);
  });
  it('charge a second look after a while, and more for one that needs opening', () => {
    const look = (t: number, what: string) => check(t, 'look', what);
    expect(minutes([look(5, 'sight glass'), look(9, 'sight glass')], 600).total - 10).toBeCloseTo(
      of('look'),
      9,
    );
    expect(minutes([look(5, 'sight glass'), look(90, 'sight glass')], 600).total - 10).toBeCloseTo(
      2 * of('look'),
      9,
    );
    expect(tariffOf([look(5, 'electrode')])).toBeGreaterThan(5 * of('look'));
    expect(tariffOf([check(5, 'look: electrode')])).toBe(tariffOf([look(5, 'electrode')]));
  });
  it('charge each question and the sheet once', () => {
    const ask = (t: number, topic: string): DeskEntry => ({ t, type: 'ask', topic });
    const desk = [ARRIVE, ask(1, 'habits'), ask(2, 'habits'), ask(3, 'since when')];
    expect(minutes([], 60, desk).total - 1).toBeCloseTo(2 * of('ask'), 9);
    const read: DeskEntry = { t: 9, type: 'read sheet' };
    expect(minutes([], 60, [ARRIVE, read, read]).total - 1).toBeCloseTo(of('read sheet'), 9);
  });
  it('charge the commissioning sheet once, whatever is repaired between', () => {
    const read = (t: number) => check(t, 'commissioning sheet');
    const log = [read(5), repair(6, 'fan contactor', 'clean'), read(7)];
    expect(tariffOf(log)).toBeCloseTo(of('commissioning sheet') + 20, 9);
    expect(of('commissioning sheet')).toBeGreaterThan(1);
  });
  it('say tools and places by the names they have at the plant', () => {
    const log = [volts(5, 'L1'), check(6, 'leak spray', 'inlet'), check(7, 'look', 'belt')];
    const { lines } = minutesOf(log, [ARRIVE], parts, 60, sound.plant);
    expect(lines.slice(1).map(({ what }) => sayMessage(what))).toEqual([
      'Multimeter, volts: Wire L1 to Wire N',
      'Leak spray: Joint behind the strainer',
      'Looked: belt',
    ]);
  });
  it('are not charged for the panel, nor for what nobody knows', () => {
    const log = [at(5, { type: 'reset', pressed: true }), check(6, 'divining rod', 'L1')];
    expect(tariffOf(log)).toBeCloseTo(0, 9);
  });
});

describe('the tariff', () => {
  it('has a row for each tool and range, at the minutes that the tool takes to connect', () => {
    for (const { id, ranges, minutesToConnect } of TOOLS) {
      const whats = ranges.length === 0 ? [id] : ranges.map((range) => `${id}: ${range.id}`);
      expect(whats.map(of), id).toEqual(whats.map(() => minutesToConnect));
    }
  });
  it('names each way once', () => {
    expect(new Set(CHECKS.map(({ what }) => what)).size).toBe(CHECKS.length);
  });
});
