import type { DeskEntry } from '../../../machines/index.ts';
import type { RunSetup, TimedAction } from '../../engine/index.ts';
import type { Message } from '../message.ts';
import { openingsOf } from './gas-work.ts';
import { leakTestOf } from './leak-tests.ts';
import { limitsProved } from './limits-proved.ts';
import { cocksSaid, jointsSaid, wireSaid } from './plant-names.ts';
import { sameDial, sideOf } from './setting-band.ts';
import { traceJob } from './trace-job.ts';
import type { JobTrace } from './trace-types.ts';

export const PROOF_IDS = [
  'full start',
  'held in service',
  'leak test',
  'jumpers out',
  'locks off',
  'settings as the sheet',
  'limits proved',
] as const;
export type ProofId = (typeof PROOF_IDS)[number];

export interface ProofItem {
  readonly id: ProofId;
  readonly met: boolean;
  /** When it was met; null where it is not, or needed nothing. */
  readonly t: number | null;
  readonly why: Message;
}
export interface Proof {
  readonly items: readonly ProofItem[];
  readonly proved: boolean;
}

/** A burner that stays in modulation for so long holds, s. */
export const HOLDS_S = 60;

/** Whether what was done shows that the plant is right again; each item says why, or why not. */
export function proofOf(
  setup: RunSetup,
  log: readonly TimedAction[],
  desk: readonly DeskEntry[],
  untilS?: number,
): Proof {
  return proofFrom(traceJob(setup, log, desk, untilS));
}

/** The same of a log that has been run again already. */
export function proofFrom(trace: JobTrace): Proof {
  const items = [
    ...startItems(trace),
    leakItem(trace),
    jumperItem(trace),
    lockItem(trace),
    settingsItem(trace),
    limitsItem(trace),
  ];
  return { items, proved: items.every(({ met }) => met) };
}

interface Start {
  readonly fromS: number;
  /** When it was released to modulation, and until when it stayed there. */
  readonly releasedS: number | null;
  readonly untilS: number;
}

/** Starts that began after the last thing that was changed. */
function startsSince({ events, endS }: JobTrace, sinceS: number): Start[] {
  const steps = events.flatMap((event) => (event.type === 'step' ? [event] : []));
  return steps.flatMap(({ t, step }, place): Start[] => {
    if (step !== 'at-rest check' || t < sinceS) return [];
    const rest = steps.slice(place + 1);
    const end = rest.findIndex((one) => one.step === 'at-rest check' || one.step === 'lockout');
    const own = end < 0 ? rest : rest.slice(0, end + 1);
    const at = own.findIndex((one) => one.step === 'modulation');
    return at < 0
      ? [{ fromS: t, releasedS: null, untilS: t }]
      : [{ fromS: t, releasedS: own[at]?.t ?? t, untilS: own[at + 1]?.t ?? endS }];
  });
}

/** The last time anything of the plant was changed by the learner. */
function lastChangeS({ acts, arrivedS }: JobTrace): number {
  const changes = acts.filter(
    ({ action }) =>
      (action.type === 'repair' && action.way !== 'report') ||
      action.type === 'adjust' ||
      action.type === 'jumper',
  );
  return changes.at(-1)?.action.t ?? arrivedS;
}

function startItems(trace: JobTrace): ProofItem[] {
  const starts = startsSince(trace, lastChangeS(trace));
  const full = starts.find(({ releasedS }) => releasedS !== null);
  const held = starts.find(
    ({ releasedS, untilS }) => releasedS !== null && untilS - releasedS >= HOLDS_S,
  );
  const why = starts.length === 0 ? 'none' : full === undefined ? 'not-through' : 'met';
  const heldS = held?.releasedS ?? null;
  const { lockout } = trace.end;
  return [
    item('full start', full?.releasedS ?? null, why),
    lockout !== null
      ? item('held in service', null, 'in-lockout', { cause: lockout })
      : item(
          'held in service',
          heldS === null ? null : heldS + HOLDS_S,
          heldS !== null ? 'met' : full === undefined ? 'none' : 'too-short',
          { seconds: HOLDS_S },
        ),
  ];
}

function leakItem(trace: JobTrace): ProofItem {
  const tests = openingsOf(trace).map(({ part, t }) => ({
    part,
    ...leakTestOf(trace, part, t, trace.endS),
  }));
  if (tests.length === 0) return needless('leak test');
  const joints = [...new Set(tests.flatMap(({ untested }) => untested))];
  return joints.length > 0
    ? item('leak test', null, 'missing', { joints: jointsSaid(joints) })
    : item('leak test', Math.max(...tests.map(({ t }) => t ?? 0)), 'met');
}

function jumperItem({ end, acts, plant }: JobTrace): ProofItem {
  const { jumpers } = end.bench;
  const [first] = jumpers;
  if (first !== undefined) {
    const params = { from: wireSaid(plant, first.from), to: wireSaid(plant, first.to) };
    return item('jumpers out', null, 'standing', params);
  }
  const out = acts.filter(({ action }) => action.type === 'jumper' && !action.on).at(-1);
  return out === undefined ? needless('jumpers out') : item('jumpers out', out.action.t, 'met');
}

function lockItem({ end, acts }: JobTrace): ProofItem {
  const { locks, supplyOn } = end.bench;
  if (locks.length > 0) return item('locks off', null, 'standing', { points: cocksSaid(locks) });
  if (!supplyOn) return item('locks off', null, 'isolated');
  const off = acts.filter(({ action }) => action.type === 'lock' && !action.on).at(-1);
  return off === undefined ? needless('locks off') : item('locks off', off.action.t, 'met');
}

/** Dials that the learner turned stand as the sheet has them, or nearer to it than they were found. */
function settingsItem(trace: JobTrace): ProofItem {
  const { acts, sheetSettings, settingsAtArrival, settingsAtEnd } = trace;
  const turned = acts.flatMap(({ action }) => (action.type === 'adjust' ? [action] : []));
  const last = turned.at(-1);
  if (last === undefined) return needless('settings as the sheet');
  const off = settingsAtEnd.find((now) => {
    if (!turned.some(sameDial(now))) return false;
    const sheet = sheetSettings.find(sameDial(now));
    const found = settingsAtArrival.find(sameDial(now));
    if (sheet === undefined || found === undefined) return false;
    if (sideOf(sheet, now.value) === 'as the sheet') return false;
    const wasWrong = sideOf(sheet, found.value) !== 'as the sheet';
    const noWorse = Math.abs(now.value - sheet.value) <= Math.abs(found.value - sheet.value);
    return !(wasWrong && noWorse);
  });
  return off === undefined
    ? item('settings as the sheet', last.t, 'met')
    : item('settings as the sheet', null, 'off', { part: off.part, setting: off.setting });
}

function limitsItem(trace: JobTrace): ProofItem {
  const limits = limitsProved(trace);
  if (limits.length === 0) return needless('limits proved');
  const missing = limits.filter(({ t }) => t === null).map(({ part }) => part);
  return missing.length > 0
    ? item('limits proved', null, 'missing', { parts: missing.join(', ') })
    : item('limits proved', Math.max(...limits.map(({ t }) => t ?? 0)), 'met');
}

function needless(id: ProofId): ProofItem {
  return { id, met: true, t: null, why: { code: codeOf(id, 'needless') } };
}

function item(id: ProofId, t: number | null, why: string, params?: Message['params']): ProofItem {
  const code = codeOf(id, why);
  return { id, met: t !== null, t, why: params === undefined ? { code } : { code, params } };
}

function codeOf(id: ProofId, why: string): string {
  return `conduct.proof.${id.replace(/ /g, '-')}.${why}`;
}
