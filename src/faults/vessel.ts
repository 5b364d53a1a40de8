/** Faults of the vessel: feed and circulation, level, fittings, heating surface. */
import { ANY_ONSET, BROKEN, type Fault, faultOf, NOT_INTERMITTENT, share } from './fault.ts';
import { by } from './mending.ts';
import { type FaultSubject, steamVesselOf } from './subject.ts';

const FAMILY = 'vessel and limits';

const waterVesselOf = (s: FaultSubject) => (s.vessel.kind === 'hot water' ? s.vessel : undefined);
const probeOf = (s: FaultSubject) => s.field.levelProbes[0];

function throttledFeedOf(s: FaultSubject) {
  const vessel = steamVesselOf(s);
  return vessel !== undefined && vessel.feedValveS > 0 ? vessel : undefined;
}

const FEED_FAULTS: readonly Fault[] = [
  faultOf(
    steamVesselOf,
    {
      id: 'feed pump fails',
      family: FAMILY,
      component: 'feed pump',
      mechanism: 'the pump has stopped, so the level falls as steam is drawn',
      severity: BROKEN,
      onsets: ANY_ONSET,
      repair: 'restore the feed pump; do not restart before the level is proved in the glass',
      remedies: by('feed pump', 'reset', 'replace'),
      priorWeight: 2,
    },
    (vessel) => {
      vessel.feedPumpRuns = false;
    },
  ),
  faultOf(
    throttledFeedOf,
    {
      id: 'feed valve stuck',
      family: FAMILY,
      component: 'feed valve',
      mechanism: 'the valve stays where it is',
      severity: BROKEN,
      onsets: ANY_ONSET,
      repair: 'free or replace the feed valve',
      remedies: by('feed valve', 'free', 'replace'),
      priorWeight: 1,
    },
    (vessel) => {
      vessel.feedValveStuck = true;
    },
  ),
  faultOf(
    throttledFeedOf,
    {
      id: 'feed valve packing tight',
      family: FAMILY,
      component: 'feed valve',
      mechanism: 'the stem moves only when asked for much, so the level wanders',
      severity: share('change of demand that it does not follow', 0.03, 0.15, 0.5),
      onsets: NOT_INTERMITTENT,
      repair: 'slacken or renew the packing, stroke the valve',
      remedies: by('feed valve', 'free', 'replace'),
      priorWeight: 1,
    },
    (vessel, severity) => {
      vessel.feedValveStiction = Math.max(vessel.feedValveStiction, severity);
    },
  ),
  faultOf(
    throttledFeedOf,
    {
      id: 'feed valve passes',
      family: FAMILY,
      component: 'feed valve',
      mechanism: 'the seat is cut, so water comes in with the valve driven shut',
      severity: share('opening that is left', 0.02, 0.1, 0.4),
      onsets: NOT_INTERMITTENT,
      repair: 'isolate, lap or replace the seat',
      remedies: by('feed valve', 'clean', 'replace'),
      priorWeight: 1,
    },
    (vessel, severity) => {
      vessel.feedValveLeak = Math.max(vessel.feedValveLeak, severity);
    },
  ),
  faultOf(
    waterVesselOf,
    {
      id: 'circulating pump fails',
      family: FAMILY,
      component: 'circulating pump',
      mechanism: 'the pump has stopped, so the heat stays in the boiler',
      severity: BROKEN,
      onsets: ANY_ONSET,
      repair: 'restore the pump, find out why the burner was not told',
      remedies: by('circulating pump', 'reset', 'replace'),
      priorWeight: 2,
    },
    (vessel) => {
      vessel.circulatingPumpRuns = false;
    },
  ),
  faultOf(
    waterVesselOf,
    {
      id: 'system valve throttled',
      family: FAMILY,
      component: 'water circuit',
      mechanism: 'a valve of the circuit was left part shut, so little water comes round',
      severity: share('share of the circulation that is lost', 0.2, 0.6, 0.95),
      onsets: NOT_INTERMITTENT,
      repair: 'open the valve; ask who shut it and why',
      remedies: by('system valve', 'open'),
      priorWeight: 1,
    },
    (vessel, severity) => {
      vessel.pumpShare *= 1 - severity;
    },
  ),
];

const LEVEL_FAULTS: readonly Fault[] = [
  faultOf(
    probeOf,
    {
      id: 'level probe fouled',
      family: FAMILY,
      component: 'level probe',
      mechanism: 'a film on the rod feels like water, so too much is shown as the level falls',
      severity: share('share of the bare rod that feels like water', 0.1, 0.5, 0.95),
      onsets: NOT_INTERMITTENT,
      repair: 'isolate, clean the probe, prove it against the gauge glass',
      remedies: by('level probe', 'clean', 'replace'),
      priorWeight: 2,
    },
    (probe, severity) => {
      probe.fouling = Math.max(probe.fouling, severity);
    },
  ),
  faultOf(
    probeOf,
    {
      id: 'level probe insulation leaking',
      family: FAMILY,
      component: 'level probe',
      mechanism: 'current leaks through the insulation of the rod, so too much water is shown',
      severity: share('current as a share of the range', 0.05, 0.2, 0.6),
      onsets: ANY_ONSET,
      repair: 'isolate, replace the probe',
      remedies: by('level probe', 'replace'),
      priorWeight: 1,
    },
    (probe, severity) => {
      probe.insulationLeak = Math.max(probe.insulationLeak, severity);
    },
  ),
  faultOf(
    steamVesselOf,
    {
      id: 'gauge-glass cock shut',
      family: FAMILY,
      component: 'gauge glass',
      mechanism: 'a cock was left shut, so the glass shows the level it had then',
      severity: BROKEN,
      onsets: NOT_INTERMITTENT,
      repair: 'blow the glass through, leave both cocks open',
      remedies: by('gauge glass', 'open'),
      priorWeight: 1,
    },
    (vessel) => {
      vessel.gaugeGlassCockShut = true;
    },
  ),
];

export const VESSEL_FAULTS: readonly Fault[] = [
  ...FEED_FAULTS,
  ...LEVEL_FAULTS,
  faultOf(
    steamVesselOf,
    {
      id: 'blow-down valve passes',
      family: FAMILY,
      component: 'blow-down valve',
      mechanism: 'the valve was not shut tight, so water goes to the drain',
      severity: { unit: 'kg/s', means: 'water lost', low: 0.02, typical: 0.4, high: 3 },
      onsets: ANY_ONSET,
      repair: 'shut the valve; isolate and replace it where it still passes',
      remedies: by('blow-down valve', 'tighten', 'replace'),
      priorWeight: 1,
    },
    (vessel, severity) => {
      vessel.waterLossKgS = Math.min(50, vessel.waterLossKgS + severity);
    },
  ),
  faultOf(
    steamVesselOf,
    {
      id: 'safety valve passes',
      family: FAMILY,
      component: 'safety valve',
      mechanism: 'the seat is cut, so steam blows below the set pressure',
      severity: share('share of its full flow', 0.01, 0.1, 0.4),
      onsets: NOT_INTERMITTENT,
      repair: 'have the valve overhauled and sealed by those who may',
      remedies: by('safety valve', 'replace', 'report'),
      priorWeight: 1,
    },
    (vessel, severity) => {
      vessel.safetyValveLeak = Math.max(vessel.safetyValveLeak, severity);
    },
  ),
  faultOf(
    (s) => s.furnace,
    {
      id: 'heating surface fouled',
      family: FAMILY,
      component: 'heating surface',
      mechanism: 'soot or scale keeps the heat in the gas, and it goes up the stack',
      severity: share('share of the heat transfer that is lost', 0.1, 0.35, 0.7),
      onsets: NOT_INTERMITTENT,
      repair: 'clean the fire side, check the water treatment, find out what made the soot',
      remedies: by('heating surface', 'clean'),
      priorWeight: 1,
    },
    (furnace, severity) => {
      furnace.fouling = Math.max(furnace.fouling, severity);
    },
  ),
];
