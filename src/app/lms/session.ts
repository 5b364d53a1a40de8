/** From the opening of a package to its leaving: what is kept, what is told, and when. */
import type { Packaged } from '../../records/lms/index.ts';
import type { Attempt } from './attempt.ts';
import type { LearningSystem } from './learning-system.ts';
import { packageNow } from './package-now.ts';

/** So long after something was done it is sent at the latest, ms. A plant that runs writes all the time. */
const KEPT_WITHIN_MS = { quiz: 2000, exercise: 20_000 } as const;
/** Shares that are the same but for the last bits. */
const NEARLY = 1e-9;

export interface PackageSession {
  /** The device has written work under a key. */
  written(key: string, text: string, isKept: boolean): void;
  tell(outcome: number): void;
  /** Sends what is not yet sent. */
  keepNow(): void;
  leave(): void;
}

export function packageSession(
  packaged: Packaged,
  system: LearningSystem,
  attempt: Attempt,
): PackageSession {
  const kind = packaged.exercise.kind === 'quiz' ? 'quiz' : 'exercise';
  const mastery = system.mastery ?? packaged.mastery;
  let timer: ReturnType<typeof setTimeout> | null = null;
  let isSent = true;

  function keepNow(): void {
    if (timer !== null) clearTimeout(timer);
    timer = null;
    if (isSent || system.mode !== 'normal') return;
    isSent = true;
    const { packed, whole } = attempt.packed(system.room);
    if (whole !== packageNow.read().whole) packageNow.write({ whole });
    system.keep(packed);
  }
  function keepSoon(): void {
    isSent = false;
    timer ??= setTimeout(keepNow, KEPT_WITHIN_MS[kind]);
  }
  async function reportBest(): Promise<void> {
    const { best, completed, passed } = attempt.read();
    if (best === null || system.mode !== 'normal') return;
    const report = { scaled: best, passed: mastery === null ? null : best >= mastery - NEARLY };
    const told = await system.report(report, { completed, passed });
    attempt.told(told);
    const later = report.passed === true && !told.passed;
    if (told.completed) packageNow.write({ told: report, later });
    isSent = false;
    keepNow();
  }

  const { best, completed, passed } = attempt.read();
  if (best !== null && completed) {
    const isPassed = mastery === null ? null : best >= mastery - NEARLY;
    packageNow.write({ told: { scaled: best, passed: isPassed } });
    // The last session may have ended before all of it was taken.
    if (isPassed === true && !passed) void reportBest();
  } else if (best !== null) void reportBest();

  return {
    written(key, text, isKept) {
      attempt.workAt(key, kind === 'quiz' ? text : null);
      if (isKept !== packageNow.read().onDevice) packageNow.write({ onDevice: isKept });
      keepSoon();
    },
    tell(outcome) {
      if (system.mode === 'normal' && attempt.outcome(outcome)) void reportBest();
    },
    keepNow,
    leave() {
      keepNow();
      system.leave();
    },
  };
}
