import { STANDING } from '../observe/moment.ts';
import type { Decision } from './decision.ts';
import type { Evidence } from './evidence.ts';
import type { JudgedClaim } from './reasoning.ts';
import { bearingsOn, speaksAgainst, speaksFor } from './speaking.ts';
import { isSupported } from './support.ts';
import type { View } from './view-of-knowing.ts';
import { arrivalOf, type Step, shareInView, viewByReadings } from './way-so-far.ts';

export type Claim = Extract<Decision, { readonly kind: 'claim' }>;

export function judgeClaim(earlier: readonly Step[], now: View, claim: Claim): JudgedClaim {
  const { part, t } = claim;
  const view = viewByReadings(earlier, now, part);
  return {
    part,
    t,
    share: shareInView(view, part),
    supported: isSupported(view, arrivalOf(earlier) ?? now, part),
    pins: weighPins(view, now, claim),
  };
}

function weighPins(view: View, now: View, { part, why }: Claim): JudgedClaim['pins'] {
  const causes = view.tables.parts.causesOf(part);
  const pins = { speakingFor: 0, against: 0, neutral: 0 };
  for (const pin of why) {
    const here = pinned(view, pin);
    const evidence = here ?? pinned(now, pin);
    if (evidence === undefined || causes.length === 0) {
      pins.neutral += 1;
      continue;
    }
    const at = here === undefined ? now : view;
    const [bearing] = bearingsOn(at, causes, [evidence]);
    if (bearing === undefined) pins.neutral += 1;
    else if (speaksAgainst(bearing)) pins.against += 1;
    else if (speaksFor(bearing)) pins.speakingFor += 1;
    else pins.neutral += 1;
  }
  return pins;
}

function pinned(view: View, pin: Claim['why'][number]): Evidence | undefined {
  const ofCheck = view.evidence().filter(({ check }) => check === pin.check);
  return (
    ofCheck.find(({ moment }) => moment === pin.moment) ??
    ofCheck.find(({ moment }) => moment === STANDING)
  );
}
