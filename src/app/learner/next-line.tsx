import { say } from '../../i18n/index.ts';
import { hrefOf } from '../shell/route.ts';
import { suggestionFacts, suggestionHref, suggestionTitle, whyWords } from './suggestion-words.ts';
import { useLearnerMap } from './use-learner-map.ts';

/** At the top of Practise: the one exercise to go on with, and the way to the map. */
export function NextLine() {
  const [next] = useLearnerMap().map.next;
  return (
    <div className="next-line">
      {next === undefined ? null : (
        <p>
          <span className="next-line-word">{say('learner.next.line')}</span>{' '}
          <a href={suggestionHref(next)}>{suggestionTitle(next)}</a>{' '}
          <span className="quiet">
            {suggestionFacts(next)}. {whyWords(next)}
          </span>
        </p>
      )}
      <a className="button" href={hrefOf({ page: 'learner' })}>
        {say('learner.link')}
      </a>
    </div>
  );
}
