import { exactLog } from '../../numeric/index.ts';
import { type Belief, causeShares, priorBelief, SURPRISE, sharesOf } from '../reasoning/belief.ts';
import { type Particles, spansOf } from '../reasoning/particles.ts';

/**
 * A second fault may stand behind the first, any of them as likely as ever: the readings were those of the
 * first.
 */
const BEHIND_IT = 0.05;
/** So little is as good as nothing, and has a logarithm. */
const LEAST_SHARE = 1e-300;

/**
 * Belief about the plant after work on it: what the work mends has gone over to "nothing wrong", evenly
 * over its plants, since what was read of the old plant tells nothing of how the mended one reads. A
 * repair that did not take is as likely as any other surprise. Particles without a sound cause stay.
 *
 * @param mends whether the work ends this fault
 */
export function afterRepair(
  belief: Belief,
  particles: Particles,
  mends: (fault: string) => boolean,
): Belief {
  const { causes, causeOf } = particles;
  const mended = causes.map(({ fault }) => fault !== null && mends(fault));
  const sound = causes.findIndex(({ fault }) => fault === null);
  const spans = spansOf(particles);
  const count = sound < 0 ? 0 : (spans[sound + 1] as number) - (spans[sound] as number);
  if (count === 0 || !mended.includes(true)) return belief;
  const shares = sharesOf(belief);
  let gone = 0;
  for (let p = 0; p < shares.length; p++) {
    if (mended[causeOf[p] as number]) gone += (1 - SURPRISE) * (shares[p] as number);
  }
  const before = sharesOf(priorBelief(particles));
  return belief.map((_, p) => {
    const cause = causeOf[p] as number;
    const share = shares[p] as number;
    const behind = gone * BEHIND_IT * (before[p] as number);
    const good = cause === sound ? (gone * (1 - BEHIND_IT)) / count : 0;
    const now = mended[cause] ? SURPRISE * share : share + good + behind;
    return exactLog(Math.max(LEAST_SHARE, now));
  });
}

/**
 * The same after something was put right that is no fault of the plant, such as a switch: if nothing else
 * is wrong with it, it is now as any sound plant.
 */
export function afterPuttingRight(belief: Belief, particles: Particles): Belief {
  const { causes, causeOf } = particles;
  const shares = sharesOf(belief);
  const ofCause = causeShares(particles, shares);
  const spans = spansOf(particles);
  return belief.map((_, p) => {
    const cause = causeOf[p] as number;
    if (causes[cause]?.fault !== null) return exactLog(Math.max(LEAST_SHARE, shares[p] as number));
    const count = (spans[cause + 1] as number) - (spans[cause] as number);
    return exactLog(Math.max(LEAST_SHARE, (ofCause[cause] as number) / count));
  });
}
