/** What hands have left at the plant since the run began. */
export interface Hands {
  /** `isolator` and cocks that a padlock holds, in the order in which they were locked. */
  readonly locks: string[];
  readonly jumpers: Jumper[];
  /** Parts whose repair opened the gas train, and when, s. */
  readonly opened: { readonly part: string; readonly t: number }[];
}

interface Jumper {
  readonly from: string;
  readonly to: string;
}

export const ISOLATOR = 'isolator';
/** A piece of wire with a clip at each end. */
export const JUMPER_OHM = 0.05;

export function createHands(): Hands {
  return { locks: [], jumpers: [], opened: [] };
}
