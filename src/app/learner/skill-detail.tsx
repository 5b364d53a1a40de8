import { useEffect, useRef } from 'react';
import { say, slugOf } from '../../i18n/index.ts';
import type { SkillOnMap } from './learner-map.ts';
import { SuggestedExercise } from './next-list.tsx';
import { reachWords } from './skill-bar.tsx';
import { atStart, knownWords, masteryName, skillTitle } from './skill-words.ts';

interface Props {
  readonly one: SkillOnMap;
  readonly onClose: () => void;
}

/** One skill of the map: what it is, how far one is with it, and what to do about it. */
export function SkillDetail({ one, onClose }: Props) {
  const { skill, word, rating, next } = one;
  const title = useRef<HTMLHeadingElement>(null);
  // What was pressed may stand above, on a phone far above.
  // biome-ignore lint/correctness/useExhaustiveDependencies: another skill is another place to read
  useEffect(() => {
    void title.current?.scrollIntoView({ block: 'nearest' });
  }, [skill]);
  return (
    <>
      <h2 id="next-title" ref={title}>
        {skillTitle(skill)}
      </h2>
      <p className="choices-lead">{say(`learner.about.${skill}`)}</p>
      <p>
        <strong>{atStart(masteryName(word))}:</strong>{' '}
        {say(`learner.means.${slugOf(word) as WordSlug}`)}
      </p>
      <p className="quiet">
        {rating === null ? '' : `${say('learner.stands', { reach: reachWords(rating) })} `}
        {atStart(knownWords(one))}.
      </p>
      <h3>{say('learner.skill.next')}</h3>
      {next === null ? (
        <p className="choices-lead">{say('learner.skill.none')}</p>
      ) : (
        <SuggestedExercise suggestion={next} />
      )}
      <p className="buttons">
        <button type="button" className="button" onClick={onClose}>
          {say('learner.skill.close')}
        </button>
      </p>
    </>
  );
}

type WordSlug = 'not-yet-tried' | 'beginning' | 'getting-there' | 'steady' | 'sure';
