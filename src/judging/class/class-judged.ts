/** What was judged, as a class keeps it; beside what the learner's own page claimed of it. */
import {
  type ClassResult,
  isRefusal,
  type JudgedParts,
  NOTHING_JUDGED,
  type ResultRemark,
} from '../../records/class/index.ts';
import type { Refused } from '../check-work.ts';
import type { JudgedQuiz, QuizRefused } from '../quiz/index.ts';
import type { JudgedWork } from '../ready-exercise.ts';

/** What a page made of the same work; null for what it does not say. */
export interface Claimed {
  readonly outcome: number | null;
  readonly hash: string | null;
}

/** Farther apart two outcomes are not the same sum done on another machine. */
const SAME_OUTCOME = 1e-9;

export function partsOfWork(
  judged: JudgedWork | Refused,
  claimed: Claimed | null,
): JudgedParts & { readonly hash: string | null } {
  if (!judged.ok) return { ...refusedParts(judged), hash: null };
  const { verdict, reasoning, result, finished, hash, orderedDone } = judged;
  const outcome = result?.outcome ?? null;
  const remarks = [
    ...falseClaims(outcome, hash, claimed),
    ...(finished ? [] : [remark('not finished')]),
    ...(orderedDone > 0 ? [remark('instructor acted', String(orderedDone))] : []),
  ];
  return {
    outcome,
    finished,
    hash,
    parts: {
      found: reasoning?.found ?? null,
      pathScore: reasoning?.path.score ?? null,
      minutes: verdict.minutes.total,
      redundant: reasoning?.path.redundant ?? null,
      premature: reasoning?.path.premature ?? null,
    },
    conduct: verdict.conduct.map(({ rule, severity, t, what, state }) => ({
      rule,
      severity,
      t,
      what,
      state,
    })),
    claims: verdict.claims.map(({ part, right, supported }) => ({ part, right, supported })),
    missed: [...verdict.missed],
    quiz: null,
    remarks,
    refused: remarks.some(({ code }) => isRefusal(code)),
  };
}

export function partsOfQuiz(
  judged: JudgedQuiz | QuizRefused,
  claimed: Pick<Claimed, 'outcome'> | null,
): JudgedParts {
  if (!judged.ok) return refusedParts(judged);
  const { answers, right, asked, score, finished, gone } = judged;
  const remarks = [
    ...falseClaims(score, null, claimed === null ? null : { ...claimed, hash: null }),
    ...(finished ? [] : [remark('not finished')]),
    ...(gone.length > 0 ? [remark('questions gone', gone.join(', ').slice(0, 1000))] : []),
  ];
  return {
    ...NOTHING_JUDGED,
    outcome: score,
    finished,
    quiz: { right, asked, answers: [...answers] },
    remarks,
    refused: remarks.some(({ code }) => isRefusal(code)),
  };
}

export type ClassPlace = Pick<
  ClassResult,
  'seat' | 'nickname' | 'what' | 'attempt' | 'startedISO' | 'handedInISO'
>;

/** One attempt of one seat, ready to be kept. */
export function classResultOf(place: ClassPlace, judged: JudgedParts): ClassResult {
  const { kind, id, title, plant } = place.what;
  return {
    seat: place.seat,
    nickname: place.nickname,
    what: { kind, id, title, plant },
    attempt: place.attempt,
    startedISO: place.startedISO,
    handedInISO: place.handedInISO,
    outcome: judged.outcome,
    finished: judged.finished,
    parts: judged.parts,
    conduct: judged.conduct,
    claims: judged.claims,
    missed: judged.missed,
    quiz: judged.quiz,
    remarks: judged.remarks,
    refused: judged.refused,
  };
}

/** What a class holds of work that nobody judges: a start is watched, not scored. */
export const NOT_JUDGED: JudgedParts = {
  ...NOTHING_JUDGED,
  finished: true,
  remarks: [remark('not judged')],
};

function refusedParts({ why, where, detail }: Refused | QuizRefused): JudgedParts {
  return {
    ...NOTHING_JUDGED,
    remarks: [{ code: why, where, detail: detail.slice(0, 1000), claimed: null, found: null }],
    refused: true,
  };
}

function falseClaims(
  outcome: number | null,
  hash: string | null,
  claimed: Claimed | null,
): ResultRemark[] {
  const remarks: ResultRemark[] = [];
  const said = claimed?.outcome ?? null;
  if (said !== null && (outcome === null || Math.abs(said - outcome) > SAME_OUTCOME)) {
    remarks.push({ ...remark('outcome differs'), claimed: said, found: outcome });
  }
  const saidHash = claimed?.hash ?? null;
  if (saidHash !== null && saidHash !== hash) {
    remarks.push({ ...remark('hash differs'), claimed: saidHash, found: hash });
  }
  return remarks;
}

function remark(code: ResultRemark['code'], detail = ''): ResultRemark {
  return { code, where: '', detail, claimed: null, found: null };
}
