/** How a valve looks at an opening: decisions only, in units of its drawing size. */
export interface ValveLook {
  /** How far stem and plug stand above the seat, drawing px. */
  readonly stemPx: number;
  /** Share of the body that is filled: 0 hollow (shut), 1 full (open). */
  readonly fill: number;
  readonly state: ValveState;
}
export type ValveState = 'shut' | 'moving' | 'open';

export const STEM_TRAVEL_PX = 9;
/** Steps of the fill, so that a valve at rest is not drawn again for nothing. */
const FILL_STEPS = 24;
/** A seat that passes is still shut to the eye: below this nobody sees the stem move. */
const SEEN_SHUT = 0.02;
const SEEN_OPEN = 0.98;

export function valveLook(opening: number): ValveLook {
  const bounded = Math.min(1, Math.max(0, opening));
  const stepped = Math.round(bounded * FILL_STEPS) / FILL_STEPS;
  return {
    stemPx: stepped * STEM_TRAVEL_PX,
    fill: stepped,
    state: bounded <= SEEN_SHUT ? 'shut' : bounded >= SEEN_OPEN ? 'open' : 'moving',
  };
}

export type Proof = 'proved' | 'not proved' | 'no proof';

/** The word beside a valve. Only a shut valve can be proved: proof of closure says nothing else. */
export function valveWord(state: ValveState, proof: Proof): string {
  if (state === 'shut' && proof === 'not proved') return 'view.valve.not-proved';
  return `view.valve.${state}`;
}
