/** Faults of flame sensors, their cables and the flame relay. */
import { ANY_ONSET, BROKEN, type Fault, faultOf, NOT_INTERMITTENT, share } from './fault.ts';
import { adjusting, by } from './mending.ts';
import { type FaultSubject, sensorOf } from './subject.ts';

const FAMILY = 'flame sensing';
/** A wire that touches metal: what resistance is left, Ω. */
const TOUCHING_OHM = 10;

const opticsOf = (s: FaultSubject) => sensorOf(s, 'uv') ?? sensorOf(s, 'ir');
const uvOf = (s: FaultSubject) => sensorOf(s, 'uv');
const irOf = (s: FaultSubject) => sensorOf(s, 'ir');
const rodOf = (s: FaultSubject) => sensorOf(s, 'ionisation');
const sensorsOf = (s: FaultSubject) =>
  s.field.flameSensors.length > 0 ? s.field.flameSensors : undefined;
const relaysOf = (s: FaultSubject) =>
  s.field.flameRelays.length > 0 ? s.field.flameRelays : undefined;

/** Firings a second that by themselves give a signal: its share of saturation, solved for the rate. */
function countsFor(
  microamps: number,
  uv: { readonly saturationMicroamps: number; readonly recoveryS: number },
): number {
  const signal = Math.min(microamps, 0.95 * uv.saturationMicroamps);
  return signal / (uv.saturationMicroamps - signal) / uv.recoveryS;
}

const SCANNER_FAULTS: readonly Fault[] = [
  faultOf(
    opticsOf,
    {
      id: 'lens dirty',
      family: FAMILY,
      component: 'scanner',
      mechanism: 'oil mist and dust on the lens take the light',
      severity: share('share of the light that is lost', 0.3, 0.9, 0.99),
      onsets: NOT_INTERMITTENT,
      repair: 'clean the lens, check its purge air',
      remedies: by('scanner', 'clean', 'replace'),
      priorWeight: 3,
    },
    (sensor, severity) => {
      sensor.lensTransmission *= 1 - severity;
    },
  ),
  faultOf(
    opticsOf,
    {
      id: 'scanner off sight line',
      family: FAMILY,
      component: 'scanner',
      mechanism: 'the swivel was left turned away, so most of the flame is out of sight',
      severity: share('share of the flame out of sight', 0.3, 0.9, 1),
      onsets: NOT_INTERMITTENT,
      repair: 'aim the scanner by its signal, secure the swivel',
      remedies: by('scanner', 'realign'),
      priorWeight: 2,
    },
    (sensor, severity) => {
      sensor.lineOfSight *= 1 - severity;
    },
  ),
  faultOf(
    uvOf,
    {
      id: 'scanner tube worn out',
      family: FAMILY,
      component: 'scanner',
      mechanism: 'the tube has aged and answers to few quanta',
      severity: share('share of the sensitivity that is lost', 0.3, 0.95, 1),
      onsets: NOT_INTERMITTENT,
      repair: 'replace the tube',
      remedies: by('scanner', 'replace'),
      priorWeight: 2,
    },
    (uv, severity) => {
      uv.tubeAge *= 1 - severity;
    },
  ),
  faultOf(
    opticsOf,
    {
      id: 'scanner runs away',
      family: FAMILY,
      component: 'scanner',
      mechanism: 'the tube or cell answers with no light, so flame is seen where there is none',
      severity: { unit: 'µA', means: 'signal with no light', low: 0.4, typical: 3, high: 8 },
      onsets: ANY_ONSET,
      repair: 'replace the tube or cell',
      remedies: by('scanner', 'replace'),
      priorWeight: 1,
    },
    (sensor, severity) => {
      if (sensor.kind === 'ir') {
        sensor.darkMicroamps = Math.min(50, sensor.darkMicroamps + severity);
      } else {
        const counts = sensor.runawayCountsPerS + (severity > 0 ? countsFor(severity, sensor) : 0);
        sensor.runawayCountsPerS = Math.min(5000, counts);
      }
    },
  ),
  faultOf(
    irOf,
    {
      id: 'scanner sees hot refractory',
      family: FAMILY,
      component: 'scanner',
      mechanism: 'the sight line ends on glowing tile whose shimmer passes for flame',
      severity: share('share of the sight that ends on hot wall', 0.2, 0.6, 0.9),
      onsets: NOT_INTERMITTENT,
      repair: 'aim the scanner across the flame root, away from glowing tile',
      remedies: by('scanner', 'realign'),
      priorWeight: 1,
    },
    (ir, severity) => {
      ir.backgroundView = Math.max(ir.backgroundView, severity);
      ir.shimmerShare = Math.min(1, ir.shimmerShare + 0.5 * severity);
    },
  ),
];

const ROD_FAULTS: readonly Fault[] = [
  faultOf(
    rodOf,
    {
      id: 'flame rod fouled',
      family: FAMILY,
      component: 'flame rod',
      mechanism: 'a film on the rod stands in the way of the current',
      severity: { unit: 'Ω', means: 'resistance of the film', low: 1e7, typical: 2e8, high: 5e9 },
      onsets: NOT_INTERMITTENT,
      repair: 'isolate, clean or replace the rod',
      remedies: by('flame rod', 'clean', 'replace'),
      priorWeight: 3,
    },
    (rod, severity) => {
      rod.foulingOhm = Math.min(1e10, rod.foulingOhm + severity);
    },
  ),
  faultOf(
    rodOf,
    {
      id: 'flame rod touches metal',
      family: FAMILY,
      component: 'flame rod',
      mechanism: 'the rod is bent onto the burner, so its volts go to earth',
      severity: BROKEN,
      onsets: ANY_ONSET,
      repair: 'isolate, set or replace the rod, prove its insulation',
      remedies: by('flame rod', 'realign', 'replace'),
      priorWeight: 2,
    },
    (rod) => {
      rod.earthOhm = Math.min(rod.earthOhm, TOUCHING_OHM);
    },
  ),
  faultOf(
    rodOf,
    {
      id: 'flame rod insulator wet',
      family: FAMILY,
      component: 'flame rod',
      mechanism: 'damp or soot on the insulator draws the volts of the rod down',
      severity: share('share of the volts that is lost', 0.2, 0.85, 0.98),
      onsets: ANY_ONSET,
      repair: 'isolate, dry and clean or replace the insulator',
      remedies: by('flame rod', 'clean', 'replace'),
      priorWeight: 2,
    },
    (rod, severity) => {
      if (severity <= 0) return;
      rod.earthOhm = Math.min(rod.earthOhm, (rod.sourceOhm * (1 - severity)) / severity);
    },
  ),
];

const RELAY_FAULTS: readonly Fault[] = [
  faultOf(
    relaysOf,
    {
      id: 'amplifier threshold wrong',
      family: FAMILY,
      component: 'flame amplifier',
      mechanism: 'the amplifier asks for more signal than it should',
      severity: {
        unit: 'µA',
        means: 'added to both switch points',
        low: 0.3,
        typical: 3,
        high: 10,
      },
      onsets: NOT_INTERMITTENT,
      repair: 'replace the amplifier',
      remedies: [...by('flame amplifier', 'replace'), ...adjusting('flame amplifier', 'threshold')],
      priorWeight: 1,
    },
    (relays, severity) => {
      for (const relay of relays) {
        relay.thresholdErrorMicroamps = Math.min(50, relay.thresholdErrorMicroamps + severity);
      }
    },
  ),
  faultOf(
    relaysOf,
    {
      id: 'flame relay slow',
      family: FAMILY,
      component: 'flame relay',
      mechanism: 'the relay holds in after the flame has gone',
      severity: { unit: 's', means: 'added to its response', low: 1, typical: 8, high: 25 },
      onsets: NOT_INTERMITTENT,
      repair: 'replace the relay, time the flame failure',
      remedies: by('flame relay', 'replace'),
      priorWeight: 1,
    },
    (relays, severity) => {
      for (const relay of relays) relay.responseS = Math.min(30, relay.responseS + severity);
    },
  ),
  faultOf(
    relaysOf,
    {
      id: 'flame relay contact open',
      family: FAMILY,
      component: 'flame relay',
      mechanism: 'the contact does not close although the relay pulls in',
      severity: BROKEN,
      onsets: ANY_ONSET,
      repair: 'replace the relay',
      remedies: by('flame relay', 'replace'),
      priorWeight: 1,
    },
    (relays) => {
      for (const relay of relays) relay.contact = 'open';
    },
  ),
  faultOf(
    relaysOf,
    {
      id: 'flame relay contact welded',
      family: FAMILY,
      component: 'flame relay',
      mechanism: 'the contact stays made after the relay has let go',
      severity: BROKEN,
      onsets: NOT_INTERMITTENT,
      repair: 'replace the relay, prove it by a flame failure',
      remedies: by('flame relay', 'replace'),
      priorWeight: 0.5,
    },
    (relays) => {
      for (const relay of relays) relay.contact = 'welded';
    },
  ),
];

export const SENSING_FAULTS: readonly Fault[] = [
  ...SCANNER_FAULTS,
  ...ROD_FAULTS,
  faultOf(
    sensorsOf,
    {
      id: 'scanner cable screen lifted',
      family: FAMILY,
      component: 'scanner cable',
      mechanism: 'the screen is off its earth, so the cable picks up noise',
      severity: { unit: 'µA', means: 'scatter of the signal', low: 0.3, typical: 2, high: 6 },
      onsets: ANY_ONSET,
      repair: 'refit the screen at one end only',
      remedies: by('flame sensor cable', 'refit', 'replace'),
      priorWeight: 1,
    },
    (sensors, severity) => {
      for (const sensor of sensors) {
        sensor.noiseMicroamps = Math.min(50, sensor.noiseMicroamps + severity);
      }
    },
  ),
  ...RELAY_FAULTS,
];
