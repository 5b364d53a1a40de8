import type { DeskEntry } from '../../../machines/index.ts';
import { type ConductFinding, finding } from './finding.ts';
import { DEAD_V } from './leads.ts';
import { wireSaid } from './plant-names.ts';
import type { Act, JobTrace } from './trace-types.ts';

/** Volts that do harm through a meter; below it a wrong reading is the worst. */
const HARMFUL_V = 50;
/** No tool touches a conductor for these. */
const HANDS_OFF = new Set(['reset', 'report']);
const METER = 'multimeter';

/** SC-1 to SC-4: meters and hands on circuits. */
export function judgeElectricalWork(trace: JobTrace, desk: readonly DeskEntry[]): ConductFinding[] {
  return [...meterFindings(trace), ...handFindings(trace, desk)];
}

function meterFindings({ acts, plant }: JobTrace): ConductFinding[] {
  return acts.flatMap(({ action, leads }) => {
    if (action.type !== 'check' || leads === null || !leads.live) return [];
    const [, range] = action.what.split(': ');
    if (range !== 'ohms' && range !== 'continuity') return [];
    const severity = leads.volts >= HARMFUL_V ? 'unsafe' : 'careless';
    const { place, other } = action;
    const code = leads.volts >= 1 ? 'ohms-live' : 'ohms-live-side';
    return [
      finding('SC-1', action.t, severity, code, {
        range,
        place: wireSaid(plant, place),
        other: wireSaid(plant, other),
        volts: Math.round(leads.volts),
      }),
    ];
  });
}

function handFindings(trace: JobTrace, desk: readonly DeskEntry[]): ConductFinding[] {
  const electrical = new Set(trace.parts.flatMap((one) => (one.electrical ? [one.part] : [])));
  const found: ConductFinding[] = [];
  trace.acts.forEach(({ action, before }, place) => {
    if (action.type !== 'repair' || HANDS_OFF.has(action.way) || !electrical.has(action.part))
      return;
    const { t, part } = action;
    if (before.bench.supplyOn) {
      found.push(finding('SC-2', t, 'unsafe', 'electrical-on', { part }));
      return;
    }
    if (!before.bench.locks.includes('isolator')) {
      found.push(finding('SC-3', t, 'careless', 'electrical-unlocked', { part }));
    }
    const earlier = trace.acts.slice(0, place);
    const sinceS = isolatedSince(trace, earlier);
    const proof = deadProof(trace, earlier, desk, sinceS, t);
    if (proof !== 'proved')
      found.push(finding('SC-4', t, 'unsafe', `electrical-${proof}`, { part }));
  });
  return found;
}

/** When the isolator was last put off; the arrival where it was off already. */
function isolatedSince({ arrivedS }: JobTrace, earlier: readonly Act[]): number {
  const off = earlier.filter(
    ({ action, before }) => action.type === 'supply' && !action.on && before.bench.supplyOn,
  );
  return off.at(-1)?.action.t ?? arrivedS;
}

/**
 * Proved dead: volts measured after the isolator was put off, none there, where there had been some
 * before. A pinned reading of leads that were left on counts as measured when it was pinned.
 */
function deadProof(
  { acts }: JobTrace,
  earlier: readonly Act[],
  desk: readonly DeskEntry[],
  sinceS: number,
  untilS: number,
): 'proved' | 'unproved' | 'never-live' {
  const readings = earlier.filter(
    ({ action, leads }) =>
      action.type === 'check' && leads !== null && action.what === `${METER}: volts`,
  );
  const after = readings.filter(({ action }) => action.t >= sinceS);
  const pinned = desk.filter(
    (entry) =>
      entry.type === 'pin' &&
      entry.what.startsWith(METER) &&
      isZero(entry.reading) &&
      entry.t >= sinceS &&
      entry.t <= untilS,
  );
  const left = readings.filter(({ action }) =>
    pinned.some(
      (pin) =>
        pin.type === 'pin' &&
        action.type === 'check' &&
        pin.place === action.place &&
        pin.other === action.other,
    ),
  );
  const dead = [...after.filter(({ leads }) => (leads?.volts ?? 0) < DEAD_V), ...left];
  if (dead.length === 0) return 'unproved';
  const wasOn = acts.some(({ before }) => before.bench.supplyOn);
  if (!wasOn) return 'proved';
  return dead.some(({ leads, action }) => wasLive(readings, action, leads?.voltsBeforeIsolation))
    ? 'proved'
    : 'never-live';
}

/** The same leads had volts between them: just before the isolation, or when they were put on. */
function wasLive(
  readings: readonly Act[],
  action: Act['action'],
  before: number | null | undefined,
): boolean {
  if (before === null || before === undefined || before >= DEAD_V) return true;
  return readings.some(
    (one) =>
      one.action.type === 'check' &&
      action.type === 'check' &&
      one.action.place === action.place &&
      one.action.other === action.other &&
      (one.leads?.volts ?? 0) >= DEAD_V,
  );
}

function isZero(reading: string): boolean {
  const value = Number.parseFloat(reading);
  return Number.isFinite(value) && Math.abs(value) < DEAD_V && /V/.test(reading);
}
