import { describe, expect, it } from 'vitest';
import {
  add,
  closingLine,
  countExit,
  countPlaywright,
  countVitest,
} from '../../src/cli/house/counts.ts';

function file(status: string, ...tests: string[]) {
  return { status, assertionResults: tests.map((test) => ({ status: test })) };
}

describe('the closing count', () => {
  it('takes passed and failed tests from the report of the tests in Node', () => {
    const report = {
      testResults: [file('passed', 'passed', 'passed'), file('failed', 'passed', 'failed')],
    };
    expect(countVitest(report, false)).toEqual({ passed: 3, failed: 1 });
  });
  it('counts a file that could not be loaded as one failure', () => {
    expect(countVitest({ testResults: [file('failed'), file('passed', 'passed')] }, false)).toEqual(
      { passed: 1, failed: 1 },
    );
  });
  it('counts a bad exit without a failed test as one failure', () => {
    expect(countVitest({ testResults: [file('passed', 'passed')] }, false)).toEqual({
      passed: 1,
      failed: 1,
    });
  });
  it('counts a run of no tests as one failure', () => {
    expect(countVitest({ testResults: [] }, true)).toEqual({ passed: 0, failed: 1 });
    expect(countPlaywright({ stats: { expected: 0, unexpected: 0, flaky: 0 } }, true)).toEqual({
      passed: 0,
      failed: 1,
    });
  });
  it('does not count skipped tests', () => {
    expect(
      countVitest({ testResults: [file('passed', 'passed', 'skipped', 'todo')] }, true),
    ).toEqual({ passed: 1, failed: 0 });
  });
  it('takes a browser test that passed only on a second try for a failure', () => {
    expect(countPlaywright({ stats: { expected: 4, unexpected: 1, flaky: 1 } }, false)).toEqual({
      passed: 4,
      failed: 2,
    });
  });
  it('closes with one plain line', () => {
    const total = add(add(countExit(true), countExit(false)), { passed: 40, failed: 0 });
    expect(closingLine(total)).toBe('41 passed, 1 failed');
  });
});
