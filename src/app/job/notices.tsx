import { FailureNote } from '../working/failure-note.tsx';
import { useSession, useSessionPart } from '../working/session-context.tsx';
import { WorkNotice } from './work-notice.tsx';

/** What went wrong with the run or with the saved work, wherever one is in the exercise. */
export function Notices() {
  return (
    <div className="notices">
      <Failures />
      <WorkNotice />
    </div>
  );
}

function Failures() {
  const failure = useSessionPart((state) => state.failure);
  const phase = useSessionPart((state) => state.phase);
  const session = useSession();
  // What an update did to saved work is said by the work itself, with its own ways on.
  if (failure === null || failure.failure === 'exercise changed') return null;
  return (
    <FailureNote
      failure={failure.failure}
      detail={failure.detail}
      onAgain={() => location.reload()}
      onDismiss={phase === 'open' ? session.dismissFailure : null}
    />
  );
}
