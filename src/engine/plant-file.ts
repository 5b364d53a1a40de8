import type { Timings, Variant } from '../../machines/burner/index.ts';
import type { FaultSubject } from '../faults/index.ts';

/** A plant as its file describes it: how it starts, what it is made of, how it is controlled. */
export interface PlantFile extends FaultSubject {
  readonly id: string;
  readonly title: string;
  readonly description: string;
  readonly variant: Variant;
  /** The practice profile it is usually run with. */
  readonly profile: string;
}

/** A named set of timings and limits in the style of one region's practice; training values. */
export interface Profile {
  readonly id: string;
  readonly title: string;
  readonly description: string;
  readonly timings: Timings;
}
