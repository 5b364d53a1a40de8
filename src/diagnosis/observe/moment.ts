/**
 * Situations in which a check is made: a step of the start, or one of these. A reading belongs to its
 * situation: the same pressure is right in one step and wrong in another.
 */
export const AT_REST = 'at rest';
export const LOCKED_OUT = 'lockout';
/** The step at which a start has come to its end. */
export const IN_SERVICE = 'modulation';
/** What a part looks like inside or a dial is set to does not hang on the step. */
export const STANDING = 'standing';
/** The supply is off, so that resistances can be measured. */
export const ISOLATED = 'isolated';

/** The situation of a plant that has just been looked at. */
export function momentOf(
  step: string,
  situation: { readonly calledForHeat: boolean; readonly supplyOn: boolean },
): string {
  if (!situation.supplyOn) return ISOLATED;
  if (step === 'lockout') return LOCKED_OUT;
  return step === 'standby' && !situation.calledForHeat ? AT_REST : step;
}
