import type { JudgedDecision, Reasoning } from '../../diagnosis/index.ts';
import { say, sayMessage, sayWord } from '../../i18n/index.ts';
import type { Verdict } from '../session/work-protocol.ts';
import { WORTH_SAYING_MIN } from './minutes-text.ts';
import { percentText } from './share-bars.tsx';
import type { Words } from './use-words.ts';

/** Nobody takes more than this home. */
const MOST_SENTENCES = 3;
const WORTH_LEARNING_MIN = 2;

/**
 * Two or three sentences out of what was judged, the weightiest first: what was unsafe, then work
 * and suspicion against the readings, then better checks, then what was left open.
 */
export function takeAway(
  reasoning: Reasoning | null,
  verdict: Pick<Verdict, 'conduct' | 'proof'>,
  words: Words,
): readonly string[] {
  const found = [
    ...unsafe(verdict),
    ...(reasoning === null ? [] : ofDecisions(reasoning, words)),
    ...open(verdict),
    ...(reasoning === null ? [] : good(reasoning, verdict)),
  ];
  return found.slice(0, MOST_SENTENCES);
}

function unsafe({ conduct }: Pick<Verdict, 'conduct'>): string[] {
  const first = conduct.find(({ severity }) => severity === 'unsafe');
  return first === undefined ? [] : [say('debrief.away.unsafe', { what: sayMessage(first.what) })];
}

function ofDecisions({ decisions, claims, found }: Reasoning, words: Words): string[] {
  const early = dearest(decisions.filter(({ kind, premature }) => kind === 'work' && premature));
  const cleared = decisions.find(
    ({ kind, refutedBy }) => kind === 'suspect' && refutedBy.length > 0,
  );
  const missed = dearest(
    decisions.filter(
      ({ kind, best, regretMinutes }) =>
        (kind === 'check' || kind === 'watch') &&
        best !== null &&
        regretMinutes >= WORTH_LEARNING_MIN,
    ),
  );
  const redundant = decisions.filter((one) => one.redundant).length;
  const weak = claims.find(({ supported }) => !supported);
  return [
    ...(early === undefined ? [] : [earlyWords(early, words)]),
    ...(cleared?.refutedBy[0] === undefined
      ? []
      : [
          say('debrief.away.refuted', {
            told: words.told(cleared.refutedBy[0]),
            part: words.part(cleared.what),
          }),
        ]),
    ...(missed?.best == null
      ? []
      : [
          say('debrief.away.better', {
            check: words.checkAt(missed.best.check, missed.best.moment),
            what: words.decision(missed),
          }),
        ]),
    ...(weak === undefined || found === 'not found'
      ? []
      : [
          say('debrief.away.claim', {
            part: words.part(weak.part),
            share: percentText(weak.share),
          }),
        ]),
    ...(redundant === 0
      ? []
      : [
          say(redundant === 1 ? 'debrief.away.redundant-one' : 'debrief.away.redundant', {
            count: redundant,
          }),
        ]),
  ];
}

function earlyWords({ what, way, best }: JudgedDecision, words: Words): string {
  const said = { way: words.way(way), part: words.part(what) };
  return best === null
    ? say('debrief.away.premature-only', said)
    : say('debrief.away.premature', { ...said, check: words.checkAt(best.check, best.moment) });
}

function open({ proof }: Pick<Verdict, 'proof'>): string[] {
  const first = proof.items.find(({ met }) => !met);
  if (first === undefined) return [];
  return [say('debrief.away.proof', { what: sayWord('job.proof', first.id).toLowerCase() })];
}

function good({ found, calibration }: Reasoning, { conduct }: Pick<Verdict, 'conduct'>): string[] {
  const safe = conduct.every(({ severity }) => severity !== 'unsafe');
  return [
    ...(found === 'by readings' && safe ? [say('debrief.away.good')] : []),
    ...(calibration === null ? [say('debrief.away.next')] : []),
  ];
}

function dearest(decisions: readonly JudgedDecision[]): JudgedDecision | undefined {
  return decisions
    .filter(({ regretMinutes }) => regretMinutes >= WORTH_SAYING_MIN)
    .sort((a, b) => b.regretMinutes - a.regretMinutes)[0];
}
