/** A session of SCORM 1.2: each call is answered at once, and each answer is looked at. */
import type { Connected, LearningSystem, SystemMode, TellTrouble } from '../learning-system.ts';
import { SCORM_ROOM } from '../packed-state.ts';
import type { ScormApi } from './find-api.ts';
import { sessionTime } from './session-time.ts';

const MODES: Readonly<Record<string, SystemMode>> = { browse: 'browse', review: 'review' };
const NOT_YET = ['not attempted', ''];

/** @param nowMs a clock that only goes on */
export function openScorm12(api: ScormApi, nowMs: () => number, tell: TellTrouble): Connected {
  const beganMs = nowMs();
  const call = callsOf(api);
  if (!call.does(() => api.LMSInitialize(''))) {
    return { system: null, trouble: { trouble: 'not begun', detail: call.lastError() } };
  }
  const mode = MODES[call.get('cmi.core.lesson_mode')] ?? 'normal';
  const saved = call.get('cmi.suspend_data');
  let over = false;

  /** All of it or a word on why not; the system goes on with what it took. */
  function put(values: readonly (readonly [element: string, value: string])[]): boolean {
    for (const [element, value] of values) {
      if (!call.does(() => api.LMSSetValue(element, value))) return refused();
    }
    if (!call.does(() => api.LMSCommit(''))) {
      tell({ trouble: 'not reached', detail: call.lastError() });
      return false;
    }
    tell(null);
    return true;
  }
  function refused(): false {
    tell({ trouble: 'refused', detail: call.lastError() });
    return false;
  }

  if (mode === 'normal' && NOT_YET.includes(call.get('cmi.core.lesson_status'))) {
    put([['cmi.core.lesson_status', 'incomplete']]);
  }
  const system: LearningSystem = {
    mode,
    mastery: masteryOf(call.get('cmi.student_data.mastery_score')),
    attempt: null,
    saved: saved === '' ? null : saved,
    room: SCORM_ROOM,
    returnAddress: null,
    sound: null,
    keep(packed) {
      if (over || mode !== 'normal') return;
      // Not every system notices by itself, and what it would cut off is lost.
      if (packed.length > SCORM_ROOM) throw new Error(`${packed.length} characters`);
      put([
        ['cmi.suspend_data', packed],
        ['cmi.core.exit', 'suspend'],
      ]);
    },
    report({ scaled, passed }, before) {
      if (over || mode !== 'normal') return Promise.resolve(before);
      const status = passed === null ? 'completed' : passed ? 'passed' : 'failed';
      // These two a system need not know.
      call.does(() => api.LMSSetValue('cmi.core.score.min', '0'));
      call.does(() => api.LMSSetValue('cmi.core.score.max', '100'));
      const taken = put([
        ['cmi.core.score.raw', String(Math.round(scaled * 10_000) / 100)],
        ['cmi.core.lesson_status', status],
      ]);
      return Promise.resolve(taken ? { completed: true, passed: passed === true } : before);
    },
    leave() {
      if (over) return;
      over = true;
      // So that the work can be gone on with, and its debrief be read again.
      if (mode === 'normal') call.does(() => api.LMSSetValue('cmi.core.exit', 'suspend'));
      const time = sessionTime((nowMs() - beganMs) / 1000);
      call.does(() => api.LMSSetValue('cmi.core.session_time', time));
      call.does(() => api.LMSCommit(''));
      call.does(() => api.LMSFinish(''));
    },
  };
  return { system, trouble: null };
}

/** Foreign code: it may throw, and says yes as text or as truth. */
function callsOf(api: ScormApi) {
  const quietly = (ask: () => unknown): unknown => {
    try {
      return ask();
    } catch {
      return undefined;
    }
  };
  return {
    does: (ask: () => unknown): boolean => String(quietly(ask)) === 'true',
    get(element: string): string {
      const value = quietly(() => api.LMSGetValue(element));
      return value === undefined || value === null ? '' : String(value);
    },
    lastError(): string {
      const code = String(quietly(() => api.LMSGetLastError()) ?? '');
      const said = String(quietly(() => api.LMSGetErrorString(code)) ?? '');
      return [code, said].filter((part) => part !== '' && part !== '0').join(' ');
    },
  };
}

/** From 0 to 100 as the system has it. */
function masteryOf(text: string): number | null {
  const value = Number(text);
  return text.trim() !== '' && value >= 0 && value <= 100 ? value / 100 : null;
}
