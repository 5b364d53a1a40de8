import type { JudgedDecision } from '../../diagnosis/index.ts';
import { say } from '../../i18n/index.ts';
import { shortClock } from '../working/clock-text.ts';
import { BestThen } from './best-then.tsx';
import { minutesText, WORTH_SAYING_MIN } from './minutes-text.ts';
import { percentText, ShareBars } from './share-bars.tsx';
import { useWords } from './use-words.ts';

/** More lines than these nobody reads. */
const MOST_TOLD = 3;

interface Props {
  readonly n: number;
  readonly decision: JudgedDecision;
  /** What the ideal way was told by the same check at the same moment; empty where it was not made. */
  readonly shownHere: readonly string[];
  readonly onSee: () => void;
  /** Null where no branch can be made of it. */
  readonly onBranch: (() => void) | null;
}

/** One moment worth going back to: what was known, what was done, what would have told more. */
export function MomentCard({ n, decision, shownHere, onSee, onBranch }: Props) {
  const words = useWords();
  const { t, before, after, best } = decision;
  /** A thought costs nothing; what it leads to does. */
  const thinks = decision.kind === 'suspect';
  return (
    <li className="moment" aria-labelledby={`moment-${n}`}>
      <h3 id={`moment-${n}`}>
        <span className="moment-number">
          <span className="for-readers">{say('debrief.moment.at', { n, time: '' })}</span>
          <span aria-hidden="true">{n}</span>
        </span>
        <span>
          <span className="moment-time">{shortClock(t)}</span> {words.decision(decision)}
        </span>
      </h3>
      <ShareBars label={say('debrief.moment.known')} shares={before} />
      <Told decision={decision} />
      {tells(decision) ? (
        <ShareBars label={say('debrief.moment.known-after')} shares={after} />
      ) : null}
      {thinks && best === null ? null : (
        <BestThen best={best} shownHere={shownHere} redundant={decision.redundant} />
      )}
      {thinks ? null : <p className="moment-cost">{costWords(decision)}</p>}
      <p className="buttons moment-acts">
        <button
          type="button"
          className="button"
          id={`see-moment-${n}`}
          aria-label={say('debrief.moment.see-name', { n })}
          onClick={onSee}
        >
          {say('debrief.moment.see')}
        </button>
        {onBranch === null ? null : (
          <button
            type="button"
            className="button"
            aria-label={say('debrief.moment.branch-name', { n })}
            onClick={onBranch}
          >
            {say('debrief.moment.branch')}
          </button>
        )}
      </p>
    </li>
  );
}

/** What was known after it is only worth a picture where it is another. */
function tells({ kind, redundant }: JudgedDecision): boolean {
  return (kind === 'check' || kind === 'watch') && !redundant;
}

function costWords({ regretMinutes, minutes }: JudgedDecision): string {
  if (regretMinutes < WORTH_SAYING_MIN) return say('debrief.moment.cost-none');
  // More than it took: what a part costs and what is risked are minutes too.
  return say(regretMinutes > minutes + 1 ? 'debrief.moment.cost-all' : 'debrief.moment.cost', {
    minutes: minutesText(regretMinutes),
  });
}

/** What it told, or why it could not have told anything. */
function Told({ decision }: { readonly decision: JudgedDecision }) {
  const words = useWords();
  const { kind, told, redundant, share, refutedBy } = decision;
  const reads = kind === 'check' || kind === 'watch';
  return (
    <div className="moment-told">
      {reads ? (
        <>
          <h4>{say('debrief.moment.told')}</h4>
          {redundant ? <p>{say('debrief.moment.told-nothing-new')}</p> : null}
          {told.length === 0 && !redundant ? <p>{say('debrief.moment.told-nothing')}</p> : null}
          <ul>
            {told.slice(0, MOST_TOLD).map((each) => (
              <li key={`${each.check} ${each.moment} ${each.aspect}`}>{words.told(each)}</li>
            ))}
          </ul>
        </>
      ) : null}
      {share === null ? null : <p>{say('debrief.moment.share', { share: percentText(share) })}</p>}
      {refutedBy.length === 0 ? null : (
        <p>
          {say('debrief.moment.refuted', {
            told: refutedBy.slice(0, MOST_TOLD).map(words.told).join('; '),
          })}
        </p>
      )}
    </div>
  );
}
