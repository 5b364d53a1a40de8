import { spawn } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync, utimesSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { beforeEach, describe, expect, it, onTestFinished } from 'vitest';
import { LOCK_FILE, lockFolder } from '../../../src/server/store/embedded/folder-lock.ts';

let folder = '';
beforeEach(() => {
  const made = mkdtempSync(join(tmpdir(), 'lock-'));
  folder = made;
  return () => rmSync(made, { recursive: true, force: true });
});

const TAKEN = expect.objectContaining({ trouble: 'folder taken' });

function holder(): Record<string, unknown> {
  return JSON.parse(readFileSync(join(folder, LOCK_FILE), 'utf8'));
}
function leave(change: Record<string, unknown>, ageS = 0): void {
  rmSync(join(folder, LOCK_FILE), { force: true });
  const lock = lockFolder(folder);
  const left = { ...holder(), mark: 'of the one before', ...change };
  lock.free();
  const path = join(folder, LOCK_FILE);
  writeFileSync(path, JSON.stringify(left));
  const at = Date.now() / 1000 - ageS;
  utimesSync(path, at, at);
}
const endedPid = async (): Promise<number> => {
  const child = spawn(process.execPath, ['--version'], { stdio: 'ignore' });
  await new Promise((resolve) => child.once('exit', resolve));
  return child.pid ?? 0;
};

describe('the lock of a data folder', () => {
  it('is held by one and free again afterwards, and the refusal says who has it and what to do', () => {
    const lock = lockFolder(folder);
    expect(() => lockFolder(folder)).toThrow(TAKEN);
    try {
      lockFolder(folder);
    } catch (error) {
      const { message } = (error as Error).cause as Error;
      for (const word of [folder, `process ${process.pid}`, 'DATA', LOCK_FILE]) {
        expect(message).toContain(word);
      }
    }
    lock.free();
    lockFolder(folder).free();
    expect(readdirSync(folder)).toEqual([]);
  });

  it('stays with another process while that one runs', async () => {
    const child = spawn(process.execPath, ['-e', 'setInterval(() => {}, 1000)'], {
      stdio: 'ignore',
    });
    onTestFinished(() => void child.kill('SIGKILL'));
    leave({ pid: child.pid, start: 'unknown' });
    expect(() => lockFolder(folder)).toThrow(TAKEN);
    const ended = new Promise((resolve) => child.once('exit', resolve));
    child.kill('SIGKILL');
    await ended;
    lockFolder(folder).free();
  });

  it('is taken over from a process that is gone, also where its number is used again', async () => {
    leave({ pid: await endedPid() });
    lockFolder(folder).free();
    leave({ start: 'of another start' });
    const again = lockFolder(folder);
    expect(holder().pid).toBe(process.pid);
    again.free();
  });

  it('is taken over where its file is only half there', () => {
    writeFileSync(join(folder, LOCK_FILE), '{"pid": 1');
    lockFolder(folder).free();
  });

  it('of another machine holds while it is touched', () => {
    leave({ host: 'elsewhere' }, 1);
    expect(() => lockFolder(folder)).toThrow(TAKEN);
    leave({ host: 'elsewhere' }, 60);
    lockFolder(folder).free();
  });

  it('left behind is taken over by one of many that come at once', async () => {
    leave({ pid: await endedPid() });
    const module = new URL('../../../src/server/store/embedded/folder-lock.ts', import.meta.url);
    const script = `
      import { lockFolder } from ${JSON.stringify(module.href)};
      try { lockFolder(process.argv[1]); process.stdout.write('held\\n'); }
      catch (error) { process.stdout.write(error.trouble + '\\n'); }
      setInterval(() => {}, 1000);`;
    const said = await Promise.all(
      Array.from({ length: 4 }, () => {
        const args = ['--import', 'tsx', '--input-type=module', '-e', script, folder];
        const child = spawn(process.execPath, args, { stdio: ['ignore', 'pipe', 'inherit'] });
        onTestFinished(() => void child.kill('SIGKILL'));
        return new Promise<string>((resolve) => {
          child.stdout.once('data', (text) => resolve(String(text).trim()));
        });
      }),
    );
    expect(said.sort()).toEqual(['folder taken', 'folder taken', 'folder taken', 'held']);
  });
});
