import { useState } from 'react';
import type { JudgedDecision, Reasoning } from '../../diagnosis/index.ts';
import { say, sayWord } from '../../i18n/index.ts';
import { useWorkPlace } from '../work/work-place.ts';
import { MOST_BRANCHES } from '../work/work-record.ts';
import { MomentCard } from './moment-card.tsx';
import { useBranching } from './use-branching.ts';
import { useWords, type Words } from './use-words.ts';

interface Props {
  readonly reasoning: Reasoning;
  /** @param place of the decision among all */
  readonly onSee: (place: number) => void;
}

/** Three to five moments, each to be seen again and to be gone on from otherwise. */
export function Moments({ reasoning, onSee }: Props) {
  const words = useWords();
  const branch = useBranching();
  const { isClass } = useWorkPlace();
  const [refused, setRefused] = useState('');
  const { moments, decisions } = reasoning;
  if (moments.length === 0) return <p>{say('debrief.moments-none')}</p>;
  const goOn = (decision: JudgedDecision) => {
    const issue = branch(decision);
    if (issue === null) setRefused('');
    else if (issue === 'full') setRefused(say('branch.full', { most: MOST_BRANCHES }));
    else setRefused(sayWord('work.trouble', issue.trouble));
  };
  return (
    <>
      <p className="choices-lead">{say('debrief.moments-lead')}</p>
      <p className="invalid" role="status">
        {refused}
      </p>
      <ol className="moments">
        {moments.map((place, at) => {
          const decision = decisions[place];
          return decision === undefined ? null : (
            <MomentCard
              key={place}
              n={at + 1}
              decision={decision}
              shownHere={shownOn(reasoning, decision, words)}
              onSee={() => onSee(place)}
              onBranch={isClass || decision.kind === 'arrive' ? null : () => goOn(decision)}
            />
          );
        })}
      </ol>
    </>
  );
}

/** The ideal way may have made the same check: then it is known what it shows here. */
function shownOn({ ideal }: Reasoning, { best }: JudgedDecision, words: Words): string[] {
  const step = ideal.find(({ check, moment }) => check === best?.check && moment === best.moment);
  if (step === undefined) return [];
  const { check, moment } = step;
  return step.told.map(({ aspect, word }) => words.answer({ check, moment, aspect, word }));
}
