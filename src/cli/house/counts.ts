/** What a stage of the tests came to. */
export interface Counts {
  readonly passed: number;
  readonly failed: number;
}

interface VitestReport {
  readonly testResults: readonly {
    readonly status: string;
    readonly assertionResults: readonly { readonly status: string }[];
  }[];
}
interface PlaywrightReport {
  readonly stats: {
    readonly expected: number;
    readonly unexpected: number;
    readonly flaky: number;
  };
}

/** A check without tests of its own is one test: did it exit well? */
export function countExit(exitedWell: boolean): Counts {
  return exitedWell ? { passed: 1, failed: 0 } : { passed: 0, failed: 1 };
}

/** A file that could not be loaded has no tests to fail, and is one failure. */
export function countVitest(report: VitestReport, exitedWell: boolean): Counts {
  let passed = 0;
  let failed = 0;
  for (const file of report.testResults) {
    const failedHere = file.assertionResults.filter((test) => test.status === 'failed').length;
    passed += file.assertionResults.filter((test) => test.status === 'passed').length;
    failed += failedHere === 0 && file.status === 'failed' ? 1 : failedHere;
  }
  return admit({ passed, failed }, exitedWell);
}

export function countPlaywright(report: PlaywrightReport, exitedWell: boolean): Counts {
  const { expected, unexpected, flaky } = report.stats;
  return admit({ passed: expected, failed: unexpected + flaky }, exitedWell);
}

export function add(a: Counts, b: Counts): Counts {
  return { passed: a.passed + b.passed, failed: a.failed + b.failed };
}

export function closingLine(counts: Counts): string {
  return `${counts.passed} passed, ${counts.failed} failed`;
}

/** A runner that exits badly with nothing counted as failed has failed all the same; so has one that ran nothing. */
function admit(counts: Counts, exitedWell: boolean): Counts {
  const ranNothing = counts.passed + counts.failed === 0;
  if (counts.failed === 0 && (!exitedWell || ranNothing)) return { ...counts, failed: 1 };
  return counts;
}
