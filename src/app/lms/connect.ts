/** Finds the learning system that a package was opened from, by the form of the package. */
import type { Packaged } from '../../records/lms/index.ts';
import { openCmi5 } from './cmi5/cmi5-system.ts';
import { readLaunch } from './cmi5/read-launch.ts';
import type { Connected, LearningSystem, SystemTrouble, TellTrouble } from './learning-system.ts';
import { findScormApi } from './scorm12/find-api.ts';
import { openScorm12 } from './scorm12/scorm-system.ts';

const ALONE = 'alone';

export async function connect(packaged: Packaged, tell: TellTrouble): Promise<LearningSystem> {
  const nowMs = (): number => performance.now();
  if (packaged.form === 'scorm12') {
    const api = findScormApi(window);
    return systemOr(api === null ? NONE : openScorm12(api, nowMs, tell), ALONE, tell);
  }
  const launch = readLaunch(location.search);
  if (launch === null) return systemOr(NONE, ALONE, tell);
  const around = {
    fetch: fetch.bind(window),
    nowMs,
    nowISO: () => new Date().toISOString(),
    newId,
    later: (act: () => void, ms: number) => void setTimeout(act, ms),
  };
  return systemOr(await openCmi5(launch, packaged.xapi, around, tell), launch.registration, tell);
}

/** A short word by chance, for what has to differ from all others. */
export function newWord(): string {
  return newId().slice(0, 13);
}

const NONE: Connected = { system: null, trouble: { trouble: 'none', detail: '' } };

/** Without one the exercise goes on by itself, and the page says so. */
function systemOr(connected: Connected, attempt: string, tell: TellTrouble): LearningSystem {
  if (connected.system !== null) return connected.system;
  tell(connected.trouble satisfies SystemTrouble);
  return {
    mode: 'normal',
    mastery: null,
    attempt,
    saved: null,
    room: null,
    returnAddress: null,
    sound: null,
    keep: () => undefined,
    report: (_, before) => Promise.resolve(before),
    leave: () => undefined,
  };
}

/** `crypto.randomUUID` is there on secure addresses alone, and a learning system may have none. */
function newId(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  bytes[6] = ((bytes[6] ?? 0) & 0x0f) | 0x40;
  bytes[8] = ((bytes[8] ?? 0) & 0x3f) | 0x80;
  const hex = [...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('');
  return hex.replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/, '$1-$2-$3-$4-$5');
}
