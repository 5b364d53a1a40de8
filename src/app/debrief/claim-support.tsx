import type { JudgedClaim } from '../../diagnosis/index.ts';
import { say } from '../../i18n/index.ts';
import { percentText } from './share-bars.tsx';

/** How far the readings stood behind a claim when it was made, and what its pins are worth. */
export function ClaimSupport({ claim }: { readonly claim: JudgedClaim }) {
  const { share, supported, pins } = claim;
  const { speakingFor, against, neutral } = pins;
  return (
    <>
      <p>
        {say(supported ? 'debrief.claim.share-enough' : 'debrief.claim.share-short', {
          share: percentText(share),
        })}
      </p>
      {speakingFor + against + neutral === 0 ? null : (
        <p>{say('debrief.claim.pins', { for: speakingFor, against, neutral })}</p>
      )}
    </>
  );
}
