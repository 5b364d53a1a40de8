/** Faults of ignition and of flame sensing. */
import { ANY_ONSET, BROKEN, type Fault, isBroken, NOT_INTERMITTENT, share } from './fault.ts';
import { type FaultSubject, sensorOf } from './subject.ts';

const IGNITION = 'ignition';
const SENSING = 'flame sensing';

const hasTransformer = (s: FaultSubject): boolean => s.field.ignitionTransformers.length > 0;
const hasOptics = (s: FaultSubject): boolean =>
  sensorOf(s, 'uv') !== undefined || sensorOf(s, 'ir') !== undefined;

function opticsOf(s: FaultSubject) {
  return sensorOf(s, 'uv') ?? sensorOf(s, 'ir');
}

/** Firings a second that by themselves give a signal: its share of saturation, solved for the rate. */
function countsFor(
  microamps: number,
  uv: { readonly saturationMicroamps: number; readonly recoveryS: number },
): number {
  const signal = Math.min(microamps, 0.95 * uv.saturationMicroamps);
  return signal / (uv.saturationMicroamps - signal) / uv.recoveryS;
}

export const IGNITION_FAULTS: readonly Fault[] = [
  {
    id: 'ignition transformer dead',
    family: IGNITION,
    component: 'ignition transformer',
    mechanism: 'the winding has failed, so no power reaches the lead',
    severity: share('share of the power that is lost', 0.6, 1, 1),
    onsets: ANY_ONSET,
    repair: 'isolate, replace the transformer',
    priorWeight: 3,
    appliesTo: hasTransformer,
    apply: (s, severity) => {
      for (const t of s.field.ignitionTransformers) t.health *= 1 - severity;
    },
  },
  {
    id: 'ignition lead tracking to earth',
    family: IGNITION,
    component: 'ignition lead',
    mechanism: 'the spark jumps to metal along the lead instead of at the gap',
    severity: share('share of the power lost on the way', 0.4, 0.95, 1),
    onsets: ANY_ONSET,
    repair: 'isolate, replace the lead',
    priorWeight: 2,
    appliesTo: hasTransformer,
    apply: (s, severity) => {
      for (const t of s.field.ignitionTransformers) {
        t.leadTracking = Math.max(t.leadTracking, severity);
      }
    },
  },
  {
    id: 'electrode insulator cracked',
    family: IGNITION,
    component: 'electrode',
    mechanism: 'a crack with soot in it carries the spark to earth',
    severity: share('share of the power lost through the crack', 0.4, 0.95, 1),
    onsets: ANY_ONSET,
    repair: 'isolate, replace the electrode, set the gap',
    priorWeight: 2,
    appliesTo: hasTransformer,
    apply: (s, severity) => {
      for (const t of s.field.ignitionTransformers) {
        t.insulatorCracked = Math.max(t.insulatorCracked, severity);
      }
    },
  },
  {
    id: 'electrode gap wide',
    family: IGNITION,
    component: 'electrode',
    mechanism: 'burnt or bent tips leave a gap too wide to jump',
    severity: { unit: 'mm', means: 'wider than set', low: 1, typical: 6, high: 10 },
    onsets: NOT_INTERMITTENT,
    repair: 'isolate, set the gap from the drawing',
    priorWeight: 2,
    appliesTo: hasTransformer,
    apply: (s, severity) => {
      s.ignition.electrodeGapMm = Math.min(15, s.ignition.electrodeGapMm + severity);
    },
  },
  {
    id: 'electrode shifted from its gas',
    family: IGNITION,
    component: 'electrode',
    mechanism: 'the electrode has turned in its clamp, away from the gas it should light',
    severity: share('0 in place, 1 clear of the gas', 0.3, 0.95, 1),
    onsets: NOT_INTERMITTENT,
    repair: 'isolate, set the electrode from the drawing',
    priorWeight: 1,
    appliesTo: hasTransformer,
    apply: (s, severity) => {
      s.ignition.electrodeOffset = Math.max(s.ignition.electrodeOffset, severity);
    },
  },
  {
    id: 'spark seen by the scanner',
    family: IGNITION,
    component: 'scanner',
    mechanism: 'the spark or its reflection stands on the sight line',
    severity: share('share of the spark in sight', 0.3, 0.8, 1),
    onsets: NOT_INTERMITTENT,
    repair: 'move the electrode or the scanner, prove spark alone is not seen',
    priorWeight: 1,
    appliesTo: (s) => sensorOf(s, 'uv') !== undefined,
    apply: (s, severity) => {
      const uv = sensorOf(s, 'uv');
      if (uv !== undefined) uv.sparkShare = Math.max(uv.sparkShare, severity);
    },
  },
];

export const SENSING_FAULTS: readonly Fault[] = [
  {
    id: 'lens dirty',
    family: SENSING,
    component: 'scanner',
    mechanism: 'oil mist and dust on the lens take the light',
    severity: share('share of the light that is lost', 0.3, 0.9, 0.99),
    onsets: NOT_INTERMITTENT,
    repair: 'clean the lens, check its purge air',
    priorWeight: 3,
    appliesTo: hasOptics,
    apply: (s, severity) => {
      const sensor = opticsOf(s);
      if (sensor !== undefined) sensor.lensTransmission *= 1 - severity;
    },
  },
  {
    id: 'scanner off sight line',
    family: SENSING,
    component: 'scanner',
    mechanism: 'the swivel was left turned away, so most of the flame is out of sight',
    severity: share('share of the flame out of sight', 0.3, 0.9, 1),
    onsets: NOT_INTERMITTENT,
    repair: 'aim the scanner by its signal, secure the swivel',
    priorWeight: 2,
    appliesTo: hasOptics,
    apply: (s, severity) => {
      const sensor = opticsOf(s);
      if (sensor !== undefined) sensor.lineOfSight *= 1 - severity;
    },
  },
  {
    id: 'scanner tube worn out',
    family: SENSING,
    component: 'scanner',
    mechanism: 'the tube has aged and answers to few quanta',
    severity: share('share of the sensitivity that is lost', 0.3, 0.95, 1),
    onsets: NOT_INTERMITTENT,
    repair: 'replace the tube',
    priorWeight: 2,
    appliesTo: (s) => sensorOf(s, 'uv') !== undefined,
    apply: (s, severity) => {
      const uv = sensorOf(s, 'uv');
      if (uv !== undefined) uv.tubeAge *= 1 - severity;
    },
  },
  {
    id: 'scanner runs away',
    family: SENSING,
    component: 'scanner',
    mechanism: 'the tube or cell answers with no light, so flame is seen where there is none',
    severity: { unit: 'µA', means: 'signal with no light', low: 0.4, typical: 3, high: 8 },
    onsets: ANY_ONSET,
    repair: 'replace the tube or cell',
    priorWeight: 1,
    appliesTo: hasOptics,
    apply: (s, severity) => {
      const ir = sensorOf(s, 'ir');
      if (ir !== undefined) ir.darkMicroamps = Math.min(50, ir.darkMicroamps + severity);
      const uv = sensorOf(s, 'uv');
      if (uv !== undefined) uv.runawayCountsPerS += countsFor(severity, uv);
    },
  },
  {
    id: 'scanner sees hot refractory',
    family: SENSING,
    component: 'scanner',
    mechanism: 'the sight line ends on glowing tile whose shimmer passes for flame',
    severity: share('share of the sight that ends on hot wall', 0.2, 0.6, 0.9),
    onsets: NOT_INTERMITTENT,
    repair: 'aim the scanner across the flame root, away from glowing tile',
    priorWeight: 1,
    appliesTo: (s) => sensorOf(s, 'ir') !== undefined,
    apply: (s, severity) => {
      const ir = sensorOf(s, 'ir');
      if (ir !== undefined) {
        ir.backgroundView = Math.max(ir.backgroundView, severity);
        ir.shimmerShare = Math.min(1, ir.shimmerShare + 0.5 * severity);
      }
    },
  },
  {
    id: 'flame rod fouled',
    family: SENSING,
    component: 'flame rod',
    mechanism: 'a film on the rod stands in the way of the current',
    severity: { unit: 'Ω', means: 'resistance of the film', low: 1e7, typical: 2e8, high: 5e9 },
    onsets: NOT_INTERMITTENT,
    repair: 'isolate, clean or replace the rod',
    priorWeight: 3,
    appliesTo: (s) => sensorOf(s, 'ionisation') !== undefined,
    apply: (s, severity) => {
      const rod = sensorOf(s, 'ionisation');
      if (rod !== undefined) rod.foulingOhm = Math.min(1e10, rod.foulingOhm + severity);
    },
  },
  {
    id: 'scanner cable screen lifted',
    family: SENSING,
    component: 'scanner cable',
    mechanism: 'the screen is off its earth, so the cable picks up noise',
    severity: { unit: 'µA', means: 'scatter of the signal', low: 0.3, typical: 2, high: 6 },
    onsets: ANY_ONSET,
    repair: 'refit the screen at one end only',
    priorWeight: 1,
    appliesTo: (s) => s.field.flameSensors.length > 0,
    apply: (s, severity) => {
      for (const sensor of s.field.flameSensors) sensor.noiseMicroamps += severity;
    },
  },
  {
    id: 'amplifier threshold wrong',
    family: SENSING,
    component: 'flame amplifier',
    mechanism: 'the amplifier asks for more signal than it should',
    severity: { unit: 'µA', means: 'added to both switch points', low: 0.3, typical: 3, high: 10 },
    onsets: NOT_INTERMITTENT,
    repair: 'replace the amplifier',
    priorWeight: 1,
    appliesTo: (s) => s.field.flameRelays.length > 0,
    apply: (s, severity) => {
      for (const relay of s.field.flameRelays) relay.thresholdErrorMicroamps += severity;
    },
  },
  {
    id: 'flame relay slow',
    family: SENSING,
    component: 'flame relay',
    mechanism: 'the relay holds in after the flame has gone',
    severity: { unit: 's', means: 'added to its response', low: 1, typical: 8, high: 25 },
    onsets: NOT_INTERMITTENT,
    repair: 'replace the relay, time the flame failure',
    priorWeight: 1,
    appliesTo: (s) => s.field.flameRelays.length > 0,
    apply: (s, severity) => {
      for (const relay of s.field.flameRelays)
        relay.responseS = Math.min(30, relay.responseS + severity);
    },
  },
  {
    id: 'flame relay contact open',
    family: SENSING,
    component: 'flame relay',
    mechanism: 'the contact does not close although the relay pulls in',
    severity: BROKEN,
    onsets: ANY_ONSET,
    repair: 'replace the relay',
    priorWeight: 1,
    appliesTo: (s) => s.field.flameRelays.length > 0,
    apply: (s, severity) => {
      if (!isBroken(severity)) return;
      for (const relay of s.field.flameRelays) relay.contact = 'open';
    },
  },
];
