import type { DeskEntry } from '../../../machines/index.ts';
import { type ConductFinding, finding } from './finding.ts';
import type { Act, JobTrace } from './trace-types.ts';

const RESETS_WITHOUT_LOOKING = 3;
/** From here on a furnace could burn all at once: a quarter of the lower limit, as gas alarms are set. */
const UNBURNT = 0.25;
/** What a nose cannot miss, of the lower limit: a fifth is where odorised gas must be plain; half of it. */
const SMELT = 0.1;

/** What finds something out, or changes something. */
const LOOKING = new Set(['check', 'repair', 'adjust', 'stroke', 'turn-cock', 'jumper']);
const LOOKING_ON_PAPER = new Set<DeskEntry['type']>(['ask', 'pin', 'read sheet']);

/** SC-9, SC-10, SC-11: resets, unburnt gas, a smell of gas. */
export function judgeStarting(trace: JobTrace, desk: readonly DeskEntry[]): ConductFinding[] {
  return [...blindResets(trace, desk), ...unburntStarts(trace), ...sparksInGas(trace)];
}

function isResetInLockout({ action, before }: Act): boolean {
  return action.type === 'reset' && action.pressed && before.lockout !== null;
}

function blindResets({ acts }: JobTrace, desk: readonly DeskEntry[]): ConductFinding[] {
  const onPaper = desk.flatMap(({ type, t }) => (LOOKING_ON_PAPER.has(type) ? [t] : []));
  const found: ConductFinding[] = [];
  let blind = 0;
  let lastS = 0;
  for (const act of acts) {
    const { action, before } = act;
    if (LOOKING.has(action.type)) blind = 0;
    if (!isResetInLockout(act)) continue;
    if (onPaper.some((t) => t >= lastS && t <= action.t)) blind = 0;
    blind += 1;
    lastS = action.t;
    if (blind < RESETS_WITHOUT_LOOKING) continue;
    const cause = before.lockout ?? '';
    found.push(finding('SC-9', action.t, 'unsafe', 'blind-reset', { resets: blind, cause }));
  }
  return found;
}

/**
 * A light-off with unburnt gas in the furnace; and a second attempt, with gas still there from before,
 * where no purge was completed between.
 */
function unburntStarts({ acts, lightOffs, events, arrivedS }: JobTrace): ConductFinding[] {
  // One start lights off in up to three steps.
  const lit = lightOffs.filter(
    ({ t, combustible }, place) =>
      t >= arrivedS &&
      combustible >= UNBURNT &&
      (lightOffs[place]?.step === 'spark check' ||
        (lightOffs[place - 1]?.combustible ?? 0) < UNBURNT),
  );
  const found = lit.map(({ t, step, combustible }) =>
    finding('SC-10', t, 'unsafe', 'lit-unburnt', { step, percent: percentOf(combustible) }),
  );
  let beforeS: number | null = null;
  for (const act of acts) {
    const { action, before } = act;
    if (!isResetInLockout(act) || before.combustible < UNBURNT) continue;
    const sinceS = beforeS;
    beforeS = action.t;
    if (sinceS === null) continue;
    const swept = events.some(
      (event) =>
        event.type === 'step' &&
        event.step === 'drive to light-off' &&
        event.t > sinceS &&
        event.t <= action.t,
    );
    if (swept) continue;
    const percent = percentOf(before.combustible);
    found.push(finding('SC-10', action.t, 'unsafe', 'reset-unburnt', { percent }));
  }
  return found;
}

function sparksInGas({ acts, parts }: JobTrace): ConductFinding[] {
  const electrical = new Set(parts.flatMap((one) => (one.electrical ? [one.part] : [])));
  return acts.flatMap(({ action, before }) => {
    const sparks =
      action.type === 'supply' ||
      action.type === 'jumper' ||
      (action.type === 'call-for-heat' && action.on) ||
      (action.type === 'reset' && action.pressed) ||
      (action.type === 'repair' && electrical.has(action.part));
    if (!sparks || before.smell < SMELT) return [];
    const percent = percentOf(before.smell);
    return [finding('SC-11', action.t, 'unsafe', `spark-${action.type}`, { percent })];
  });
}

function percentOf(share: number): number {
  return Math.round(share * 100);
}
