import { type ConductFinding, finding } from './finding.ts';
import { lookedAt } from './looked-at.ts';
import type { Act, JobTrace } from './trace-types.ts';

/** Hands are in the casing of fan or burner for these. */
export const INSIDE_PARTS: ReadonlySet<string> = new Set([
  'fan belt',
  'fan motor',
  'fan motor wiring',
  'fan speed pick-up',
  'air damper',
  'air inlet screen',
  'ignition electrode',
  'ignition lead',
  'flame rod',
  'scanner',
  'pilot burner',
  'pilot orifice',
  'main gas nozzle',
  'burner head',
  'boiler passes',
  'heating surface',
  'flue',
]);
/** Of these a shaft may start to turn, or a spark jump, as soon as someone wants the burner. */
const MAY_START = new Set([
  'fan belt',
  'air damper',
  'ignition electrode',
  'burner head',
  'main gas nozzle',
  'pilot burner',
]);
/** Of what a look must open, that which lies in fan, burner or flue; the rest is in boxes of its own. */
export const LOOKS_INSIDE: ReadonlySet<string> = new Set([
  'belt',
  'electrode',
  'lens',
  'scanner sight line',
  'flame rod',
  'pilot burner',
  'nozzle',
  'diffuser',
  'boiler passes',
  'flue',
]);
const HANDS_OFF = new Set(['report', 'reset']);
const TURNS_RPM = 20;

/** SC-15, SC-16: hands or eyes inside while it turns or burns, or while it could begin to. */
export function judgeInsideWork({ acts }: JobTrace): ConductFinding[] {
  return acts.flatMap((act) => {
    const what = insideOf(act);
    if (what === null) return [];
    const { action, before } = act;
    const { t } = action;
    if (before.flame || before.firing) {
      return [finding('SC-15', t, 'unsafe', 'inside-burning', { what, step: before.step })];
    }
    if (before.fanRpm > TURNS_RPM) {
      const params = { what, rpm: Math.round(before.fanRpm) };
      return [finding('SC-15', t, 'unsafe', 'inside-turning', params)];
    }
    return action.type === 'repair' && MAY_START.has(what) && before.bench.supplyOn
      ? [finding('SC-16', t, 'careless', 'inside-may-start', { what })]
      : [];
  });
}

function insideOf(act: Act): string | null {
  const { action } = act;
  if (action.type === 'repair') {
    return INSIDE_PARTS.has(action.part) && !HANDS_OFF.has(action.way) ? action.part : null;
  }
  const seen = act.inside ? lookedAt(act) : null;
  return seen !== null && LOOKS_INSIDE.has(seen) ? seen : null;
}
