import { readFileSync } from 'node:fs';

/**
 * When a process began, as the system counts it: with its id it names one process for good,
 * since ids are given again. Null where it does not run; 'unknown' where the system does not say.
 */
export function processStart(pid: number): string | null {
  try {
    process.kill(pid, 0);
  } catch (error) {
    // Of somebody else, but there.
    if ((error as NodeJS.ErrnoException).code !== 'EPERM') return null;
  }
  try {
    const stat = readFileSync(`/proc/${pid}/stat`, 'utf8');
    // Behind the name, which may hold anything, in brackets.
    const fields = stat.slice(stat.lastIndexOf(')') + 2).split(' ');
    const [state = '', start = ''] = [fields[STATE], fields[START]];
    if (state === 'Z' || state === 'X') return null;
    const boot = readFileSync('/proc/sys/kernel/random/boot_id', 'utf8').trim();
    return `${boot} ${start}`;
  } catch {
    return 'unknown';
  }
}

/** Places behind the name in /proc/…/stat. */
const STATE = 0;
const START = 19;
