import { spawn } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));

interface Ended {
  readonly code: number | null;
  readonly stdout: string;
  readonly stderr: string;
}

/** The command as a person would run it; `readOnly` bytes of its output are read, then the pipe is shut. */
function flamewright(
  words: readonly string[],
  readOnly = Number.POSITIVE_INFINITY,
): Promise<Ended> {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, ['--import', 'tsx', 'src/cli/main.ts', ...words], {
      cwd: ROOT,
    });
    let stdout = '';
    let stderr = '';
    child.stdout.on('data', (data) => {
      stdout += data;
      if (stdout.length >= readOnly) child.stdout.destroy();
    });
    child.stderr.on('data', (data) => {
      stderr += data;
    });
    child.on('error', reject);
    child.on('close', (code) => resolve({ code, stdout, stderr }));
  });
}

describe('flamewright as a process', () => {
  it('exits 0 after a lockout, with only JSON Lines on stdout', async () => {
    const { code, stdout, stderr } = await flamewright(['run', 'air-switch-welded', '--json']);
    expect({ code, stderr }).toEqual({ code: 0, stderr: '' });
    const events = stdout
      .trim()
      .split('\n')
      .map((line) => JSON.parse(line));
    expect(events.at(-1)).toMatchObject({ type: 'end', lockout: 'air proved with fan at rest' });
  });
  it('exits 2 on a mistake, with nothing on stdout', async () => {
    const { code, stdout, stderr } = await flamewright(['run', 'helthy-start', '--json']);
    expect({ code, stdout }).toEqual({ code: 2, stdout: '' });
    expect(stderr).toContain('Did you mean healthy-start?');
  });
  it('ends quietly when its reader has seen enough', async () => {
    const { code, stderr } = await flamewright(['list', 'faults', '--json'], 1);
    expect({ code, stderr }).toEqual({ code: 0, stderr: '' });
  });
});
