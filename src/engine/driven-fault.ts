/** A fault that an act has set going: it grows or shrinks, or it comes and goes. */
import type { RandomState } from '../numeric/index.ts';
import type { FaultOnset } from './standing-faults.ts';

export type DrivenFault = Ramp | Spells;

export interface Ramp {
  readonly kind: 'ramp';
  readonly fault: string;
  readonly from: number;
  readonly to: number;
  readonly scale: Scale;
  readonly startMs: number;
  readonly overMs: number;
}
export interface Spells {
  readonly kind: 'spells';
  readonly fault: string;
  readonly severity: number;
  readonly onset: Extract<FaultOnset, { kind: 'intermittent' }>;
  readonly chance: RandomState;
}

/**
 * How a severity gets from one value to another: by equal amounts; by equal ratios from the fault's
 * low bound on, where what is worth teaching spans decades; or at the end, where nothing lies between.
 */
export type Scale =
  | { readonly kind: 'amounts' }
  | { readonly kind: 'ratios'; readonly low: number }
  | { readonly kind: 'at once' };
