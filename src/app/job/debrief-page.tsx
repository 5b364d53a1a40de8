import { say } from '../../i18n/index.ts';
import { BranchList } from '../debrief/branch-list.tsx';
import { DebriefHead, UnsafeFirst } from '../debrief/debrief-head.tsx';
import { DebriefParts, Part } from '../debrief/debrief-parts.tsx';
import { Moments } from '../debrief/moments.tsx';
import { NoReasoning } from '../debrief/no-reasoning.tsx';
import { PrintedPage } from '../debrief/printed-page.tsx';
import { TakeAwayList } from '../debrief/take-away-list.tsx';
import { WhatHappened } from '../debrief/what-happened.tsx';
import { JobCounted } from '../learner/counted-note.tsx';
import type { Job } from '../library/exercises.ts';
import type { Verdict } from '../session/work-protocol.ts';
import type { Surroundings } from '../settings/theme.ts';
import { WayOut } from '../shell/way-out.tsx';
import { AgainButton } from './again-button.tsx';
import { ExerciseFront } from './exercise-front.tsx';
import type { ReasoningNow } from './use-reasoning.ts';

interface Props {
  readonly job: Job;
  readonly look: Surroundings;
  readonly verdict: Verdict | 'failed' | null;
  readonly reasoned: ReasoningNow;
  /** Opens the run again, at a moment of it where one is given. */
  readonly onReplay: (tS: number | null) => void;
  /** The same, at a decision: by its place among all. */
  readonly onDecision: (place: number) => void;
}

/** What happened, how one went about it, what it was; and all of it again on one sheet of paper. */
export function DebriefPage({ job, look, verdict, reasoned, onReplay, onDecision }: Props) {
  const reasoning = reasoned.reasoning;
  const judged = verdict === null || verdict === 'failed' ? null : verdict;
  return (
    <ExerciseFront title={`${say('debrief.title')}: ${job.title}`}>
      <DebriefHead />
      {judged === null ? (
        <p className="front-lead" role="status">
          {say(verdict === null ? 'debrief.waiting' : 'debrief.failed')}
        </p>
      ) : (
        <div className="debrief">
          <UnsafeFirst verdict={judged} onSee={onReplay} />
          <Part id="happened" title={say('debrief.happened')}>
            <WhatHappened look={look} reasoning={reasoning} />
          </Part>
          {reasoning === null ? (
            <NoReasoning reasoned={reasoned} />
          ) : (
            <Part id="moments" title={say('debrief.moments')}>
              <Moments reasoning={reasoning} onSee={onDecision} />
            </Part>
          )}
          <BranchList />
          <DebriefParts job={job} verdict={judged} reasoned={reasoned} onReplay={onReplay} />
          <Part id="away" title={say('debrief.away')}>
            <TakeAwayList reasoning={reasoning} verdict={judged} />
          </Part>
        </div>
      )}
      <JobCounted job={job} verdict={verdict} reasoned={reasoned} />
      <p className="buttons debrief-acts">
        <button
          type="button"
          className="button primary"
          id="replay-all"
          onClick={() => onReplay(null)}
        >
          {say('debrief.replay')}
        </button>
        <button
          type="button"
          className="button"
          disabled={judged === null}
          onClick={() => window.print()}
        >
          {say('debrief.print')}
        </button>
        <WayOut className="button" href="#/practise">
          {say('job.to-practise')}
        </WayOut>
        <AgainButton />
      </p>
      {judged === null ? null : <PrintedPage job={job} verdict={judged} reasoning={reasoning} />}
    </ExerciseFront>
  );
}
