import { say, sayWord } from '../../i18n/index.ts';
import type { Job } from '../library/exercises.ts';
import type { Verdict } from '../session/work-protocol.ts';
import { mendWords } from './mend-words.ts';

interface Props {
  readonly verdict: Verdict;
  readonly job?: Pick<Job, 'userError'>;
  /** Where nothing was to be mended, nothing is said of whether it is. */
  readonly brief?: boolean;
}

/** What was wrong, whether it is gone, and whether the burner held once it was left alone. */
export function Truth({ job, verdict, brief = false }: Props) {
  const { truth, standing } = verdict;
  return (
    <>
      {truth.faults.length === 0 ? <p>{say('debrief.truth.none')}</p> : null}
      {job?.userError === undefined ? null : (
        <>
          <p>{say('debrief.truth.user-error', { what: job.userError.what })}</p>
          <p className="quiet">
            {say('debrief.truth.mend', { mend: job.userError.mend.map(mendWords).join('; ') })}
          </p>
        </>
      )}
      <ul className="truth">
        {truth.faults.map(({ id, component, mechanism, repair }) => {
          const stands = standing.includes(id);
          return (
            <li key={id} data-stands={stands}>
              <p>
                <strong>{id}</strong>{' '}
                {brief ? null : (
                  <span className="verdict-mark">
                    {say(stands ? 'debrief.standing' : 'debrief.gone')}
                  </span>
                )}
              </p>
              <p>{`${component}: ${mechanism}.`}</p>
              <p className="quiet">{say('debrief.truth.repair', { repair })}</p>
              {stands && !brief ? <p>{say('debrief.standing-still')}</p> : null}
            </li>
          );
        })}
      </ul>
      {brief ? null : <p>{heldWords(verdict.held)}</p>}
    </>
  );
}

/** What the plant did when everybody had gone. */
export function heldWords({ held, forS, lockout, ran }: Verdict['held']): string {
  const minutes = Math.round(forS / 60);
  if (held) return say(ran ? 'debrief.held' : 'debrief.held-idle', { minutes });
  const cause = lockout === null ? '–' : sayWord('cause', lockout).toLowerCase();
  return say('debrief.not-held', { cause });
}
