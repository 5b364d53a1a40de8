import { applies, type Condition } from './condition.ts';
import { CAUSES, type Cause, type InputName, type Variant } from './terminals.ts';

/** Causes that need no reset: the burner shuts down safely and starts again by itself. */
export const SELF_CLEARING: ReadonlySet<Cause> = new Set(['water low', 'supply out of band']);

/** Causes after which a profile may allow one automatic restart. */
export const RECYCLABLE: ReadonlySet<Cause> = new Set(['flame lost in service']);

/**
 * Which cause is kept of several in one instant: what someone did before what the circuit did,
 * that before what the plant did, that before what followed from it. The rest keep their order
 * in CAUSES.
 */
const OUTRANKING: readonly Cause[] = [
  'emergency stop',
  'control fuse open',
  'safety relay did not follow',
  'water very low',
  'high limit open',
  'furnace pressure high',
  'gas pressure low',
  'gas pressure high',
  'airflow not proved',
  'airflow lost in service',
];

export function rankOf(cause: Cause): number {
  const rank = OUTRANKING.indexOf(cause);
  return rank >= 0 ? rank : OUTRANKING.length + CAUSES.indexOf(cause);
}

interface Standing {
  readonly input: InputName;
  /** The value at which the cause stands. */
  readonly at: boolean;
  readonly when?: Condition;
}

/** The inputs that show that a cause still stands. A cause that is not listed is over once it has locked out. */
export const STANDS: { readonly [C in Cause]?: readonly Standing[] } = {
  'safety relay did not follow': [{ input: 'safetyRelayFeedback', at: true }],
  'air proved with fan at rest': [{ input: 'airProved', at: true }],
  'flame seen at rest': [{ input: 'flame', at: true }],
  'flame seen before fuel': [{ input: 'flame', at: true }],
  'valve not proved closed': [
    { input: 'upstreamValveClosed', at: false, when: { proofOfClosure: [true] } },
    { input: 'downstreamValveClosed', at: false, when: { proofOfClosure: [true] } },
  ],
  'gas pressure low': [{ input: 'gasPressureAboveLow', at: false }],
  'gas pressure high': [{ input: 'gasPressureBelowHigh', at: false }],
  'water low': [{ input: 'waterAboveFirst', at: false }],
  'water very low': [{ input: 'waterAboveSecond', at: false }],
  'high limit open': [{ input: 'highLimitMade', at: false }],
  'furnace pressure high': [{ input: 'furnacePressureInBand', at: false }],
  'emergency stop': [{ input: 'emergencyStopClear', at: false }],
  'supply out of band': [{ input: 'supplyInBand', at: false }],
  'control fuse open': [{ input: 'controlFuseMade', at: false }],
};

export function causeStands(
  cause: Cause,
  variant: Variant,
  isOn: (input: InputName) => boolean,
): boolean {
  const standing = STANDS[cause];
  if (standing === undefined) return false;
  return standing.some((one) => applies(one.when, variant) && isOn(one.input) === one.at);
}
