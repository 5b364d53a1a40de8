import { spawnSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { REPORTS } from '../../../src/cli/house/paths.ts';
import { adviceFor, areShellsRequired, findShell, SHELLS } from '../../../src/cli/house/shells.ts';
import { createRun } from '../../../src/engine/index.ts';
import { library, shippedSetup } from '../../support/library.ts';
import { writeEngineScript } from './engine-script.ts';

/** A hung shell must end; a slow machine must not fail one. */
const LIMIT_MS = 240_000;
const FOLDER = join(REPORTS, 'engines');

let script = '';
let byNode: readonly string[] = [];

beforeAll(async () => {
  script = await writeEngineScript(FOLDER);
  // Node alone says `console.log` where the shells say `print`.
  const prelude = join(FOLDER, 'print.cjs');
  writeFileSync(prelude, 'globalThis.print = console.log;\n');
  byNode = hashesFrom(process.execPath, ['--require', prelude, script]);
}, LIMIT_MS);

function hashesFrom(program: string, args: readonly string[]): string[] {
  const { status, stdout, stderr, error } = spawnSync(program, args, {
    encoding: 'utf8',
    timeout: LIMIT_MS,
  });
  if (status !== 0) throw new Error(`${program} did not finish: ${error?.message ?? stderr}`);
  return stdout.trimEnd().split('\n');
}

describe('every shipped scenario, run by the engine as one plain script', () => {
  it('leaves a hash of its own in Node, and the one that these tests get without bundling', () => {
    expect(byNode.map((line) => line.split(':')[0])).toEqual(library.scenarios.map(({ id }) => id));
    expect(new Set(byNode.map((line) => line.split(': ')[1])).size).toBe(byNode.length);
    const run = createRun(shippedSetup('healthy-start'), { keep: 'hash only' });
    run.advanceTo(library.scenarios.find(({ id }) => id === 'healthy-start')?.until ?? 0);
    expect(byNode).toContain(`healthy-start: ${run.hash()} after ${run.timeS()} s`);
  });

  // One after the other: the machine that CI has is small.
  it.for(SHELLS.map((shell) => [shell.engine, shell] as const))(
    'leaves the same hash in %s as in Node',
    { timeout: LIMIT_MS },
    ([, shell], test) => {
      const program = findShell(shell);
      if (program === undefined) {
        const advice = adviceFor(shell);
        if (areShellsRequired()) expect.fail(advice);
        test.skip(advice);
        return;
      }
      expect(hashesFrom(program, [script])).toEqual(byNode);
    },
  );
});
