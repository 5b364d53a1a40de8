import type { Claim } from '../../../machines/job/index.ts';
import { NO_FAULT } from '../../../machines/job/index.ts';
import type { JudgedClaim } from '../../diagnosis/index.ts';
import { say } from '../../i18n/index.ts';
import { ClaimSupport } from '../debrief/claim-support.tsx';
import type { Verdict } from '../session/work-protocol.ts';
import { claimWords, missedWords } from './claim-words.ts';
import { claimedPart } from './claims.tsx';

interface Props {
  readonly claims: readonly Pick<Claim, 'mechanism' | 'why'>[];
  readonly verdict: Pick<Verdict, 'claims' | 'missed' | 'truth'>;
  /** How far the readings stood behind each; empty where that is not known. */
  readonly judged?: readonly JudgedClaim[];
}

/** Each cause that was named: right or wrong, with readings or by luck; and what nobody named. */
export function ClaimVerdicts({ claims, verdict, judged = [] }: Props) {
  const { claims: verdicts, missed, truth } = verdict;
  return (
    <ul className="claims judged">
      {verdicts.map((claim, place) => (
        <li key={claim.part} data-right={claim.right} data-supported={claim.supported}>
          <p>
            <Mark right={claim.right} />{' '}
            <strong>{say('job.finish.claimed', { part: claimedPart(claim.part) })}</strong>
          </p>
          {(claims[place]?.mechanism ?? '') === '' ? null : (
            <p className="quiet as-written">{claims[place]?.mechanism}</p>
          )}
          {claimWords(claim, claims[place]?.why.length ?? 0, truth.faults).map((said) => (
            <p key={said}>{said}</p>
          ))}
          {judged
            .filter(({ part }) => part === claim.part)
            .slice(-1)
            .map((each) => (
              <ClaimSupport key={each.t} claim={each} />
            ))}
        </li>
      ))}
      {verdicts.length === 0 ? <li>{say('debrief.you.nothing')}</li> : null}
      {missed.map((part) => (
        <li key={part} data-right="false">
          <p>
            <strong>{missedWords(part === NO_FAULT ? null : part)}</strong>
          </p>
        </li>
      ))}
    </ul>
  );
}

export function Mark({ right }: { readonly right: boolean }) {
  return <span className="verdict-mark">{say(right ? 'debrief.right' : 'debrief.wrong')}</span>;
}
