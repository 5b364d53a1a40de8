import { useState } from 'react';
import { say, sayWord } from '../../i18n/index.ts';
import { ClaimForm } from './claim-form.tsx';
import { Claims } from './claims.tsx';
import { useExercise } from './exercise-context.tsx';
import { HandoverForm } from './handover-form.tsx';
import { ProofItems, useProof } from './proof-list.tsx';

/** From the cause to the handover: each phase of the desk has its paper. */
export function Finish() {
  const { desk, take } = useExercise();
  switch (desk.phase) {
    case 'working':
      return desk.claims.length === 0 ? <ClaimForm title={say('job.finish.claim')} /> : <Claimed />;
    case 'claim':
      return <Claimed />;
    case 'proof':
      return <Proving />;
    case 'handover':
      return (
        <div className="work-form">
          <p>{say('desk.handover')}</p>
          <button type="button" className="button primary" onClick={() => take({ type: 'close' })}>
            {say('job.finish.close')}
          </button>
          <button type="button" className="button" onClick={() => take({ type: 'begin' })}>
            {say('job.finish.reopen')}
          </button>
        </div>
      );
    default:
      return <p className="quiet">{say('job.finish.first')}</p>;
  }
}

function Claimed() {
  const { take } = useExercise();
  const [another, setAnother] = useState(false);
  const [refused, setRefused] = useState('');
  return (
    <div className="work-form">
      <Claims mayWithdraw={true} />
      <p>{say('desk.claim')}</p>
      <button
        type="button"
        className="button primary"
        onClick={() => {
          const refusal = take({ type: 'prove' });
          setRefused(refusal === null ? '' : sayWord('refusal', refusal));
        }}
      >
        {say('job.finish.prove')}
      </button>
      <p className="invalid" role="status">
        {refused}
      </p>
      {another ? (
        <ClaimForm title={say('job.finish.another')} />
      ) : (
        <button type="button" className="button" onClick={() => setAnother(true)}>
          {say('job.finish.another')}
        </button>
      )}
    </div>
  );
}

function Proving() {
  const { take } = useExercise();
  const proof = useProof();
  return (
    <div className="work-form">
      <Claims mayWithdraw={true} />
      <h3>{say('job.finish.proof')}</h3>
      <p className="quiet">{say('job.finish.proof-lead')}</p>
      {proof === null ? (
        <p className="quiet">{say('job.finish.proof-waiting')}</p>
      ) : (
        <ProofItems proof={proof} />
      )}
      <button type="button" className="button" onClick={() => take({ type: 'begin' })}>
        {say('job.finish.back')}
      </button>
      <HandoverForm proved={proof?.proved ?? null} />
    </div>
  );
}
