import { say, sayWord } from '../../i18n/index.ts';
import { useStorePart } from '../session/store.ts';
import { useWorkAround } from './work-context.tsx';

/** What went wrong with saving or reading the work, and the ways on. */
export function WorkNotice() {
  const work = useWorkAround();
  const issue = useStorePart(work.state, (state) => state.issue);
  if (issue === null) return null;
  const changed = issue.trouble === 'exercise changed';
  return (
    <div className="failure" role="alert">
      <p>{sayWord('work.trouble', issue.trouble)}</p>
      <p className="failure-acts">
        {changed ? (
          <>
            <button type="button" className="button primary" onClick={() => work.startAnew()}>
              {say('work.begin-anew')}
            </button>
            <button type="button" className="button" onClick={() => work.goOnAnyway()}>
              {say('work.go-on-anyway')}
            </button>
          </>
        ) : (
          <button type="button" className="button" onClick={() => work.dismissIssue()}>
            {say('work.dismiss')}
          </button>
        )}
      </p>
    </div>
  );
}
