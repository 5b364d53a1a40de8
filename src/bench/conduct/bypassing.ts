import { type ConductFinding, finding } from './finding.ts';
import { interlocksBetween, lessSafe } from './interlocks.ts';
import { wireSaid, wordsOf } from './plant-names.ts';
import { sameDial, sideOf } from './setting-band.ts';
import type { JobTrace, Span } from './trace-types.ts';

/** SC-12, SC-13, SC-14: what protects bypassed, moved, or held by hand while fuel is on. */
export function judgeBypassing(trace: JobTrace): ConductFinding[] {
  return [...jumperFindings(trace), ...settingFindings(trace), ...strokeFindings(trace)];
}

function jumperFindings(trace: JobTrace): ConductFinding[] {
  const { acts, firings, plant } = trace;
  const moments = [
    ...firings.map(({ at }) => ({ t: at.t, jumpers: at.bench.jumpers })),
    ...acts.flatMap(({ action, before }) =>
      action.type === 'jumper' && action.on && before.firing
        ? [{ t: action.t, jumpers: [{ from: action.from, to: action.to }] }]
        : [],
    ),
  ].sort((a, b) => a.t - b.t);
  const named = new Set<string>();
  return moments.flatMap(({ t, jumpers }) =>
    jumpers.flatMap(({ from, to }) => {
      const across = interlocksBetween(plant, from, to);
      const key = across.join(', ');
      if (across.length === 0 || named.has(key)) return [];
      named.add(key);
      const params = {
        from: wireSaid(plant, from),
        to: wireSaid(plant, to),
        across: across.map(wordsOf).join(', '),
      };
      return [finding('SC-12', t, 'unsafe', 'fired-jumpered', params)];
    }),
  );
}

/** Fired, or handed over, with a protective dial beyond the sheet. Down to prove a limit is no harm. */
function settingFindings(trace: JobTrace): ConductFinding[] {
  const { acts, firings, handovers, sheetSettings, endS } = trace;
  return acts.flatMap(({ action }, place) => {
    if (action.type !== 'adjust') return [];
    const { t, part, setting } = action;
    const worse = lessSafe(part);
    const sheet = sheetSettings.find(sameDial(action));
    if (worse === null || sheet === undefined) return [];
    const side = sideOf(sheet, Math.min(sheet.max, Math.max(sheet.min, action.value)));
    if (side === 'as the sheet' || (worse !== 'either' && side !== worse)) return [];
    const next = acts
      .slice(place + 1)
      .find((act) => act.action.type === 'adjust' && sameDial(action)(act.action));
    const stands: Span = { fromS: t, toS: next?.action.t ?? endS };
    const params = { part, setting, side };
    const fired = firings.find((firing) => overlaps(firing, stands));
    if (fired !== undefined) {
      const firedS = Math.max(t, fired.fromS);
      return [finding('SC-13', firedS, 'unsafe', 'fired-off-sheet', params)];
    }
    const left = handovers.find((one) => one.t >= stands.fromS && one.t <= stands.toS);
    return left === undefined ? [] : [finding('SC-13', left.t, 'unsafe', 'left-off-sheet', params)];
  });
}

function strokeFindings({ acts, firings }: JobTrace): ConductFinding[] {
  const moments = [
    ...firings.map(({ at }) => ({ t: at.t, servos: at.bench.strokes.map(({ servo }) => servo) })),
    ...acts.flatMap(({ action, before }) =>
      action.type === 'stroke' && action.deg >= 0 && before.firing
        ? [{ t: action.t, servos: [action.servo] }]
        : [],
    ),
  ].sort((a, b) => a.t - b.t);
  const named = new Set<string>();
  return moments.flatMap(({ t, servos }) =>
    servos.flatMap((servo) => {
      if (named.has(servo)) return [];
      named.add(servo);
      return [finding('SC-14', t, 'unsafe', 'fired-held', { servo: wordsOf(servo) })];
    }),
  );
}

function overlaps(one: Span, other: Span): boolean {
  return one.fromS < other.toS && one.toS >= other.fromS;
}
