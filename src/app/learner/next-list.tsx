import type { Suggestion } from '../../diagnosis/mastery/index.ts';
import { say } from '../../i18n/index.ts';
import { suggestionFacts, suggestionHref, suggestionTitle, whyWords } from './suggestion-words.ts';

/** What to practise next, the first the most, each with its reason. */
export function NextList({ next }: { readonly next: readonly Suggestion[] }) {
  if (next.length === 0) return <p className="choices-lead">{say('learner.next.nothing')}</p>;
  return (
    <ol className="next-list">
      {next.map((suggestion) => (
        <li key={`${suggestion.kind} ${suggestion.id}`}>
          <SuggestedExercise suggestion={suggestion} />
        </li>
      ))}
    </ol>
  );
}

export function SuggestedExercise({ suggestion }: { readonly suggestion: Suggestion }) {
  return (
    <a className="choice" href={suggestionHref(suggestion)}>
      <strong>{suggestionTitle(suggestion)}</strong>
      <span className="next-facts">{suggestionFacts(suggestion)}</span>
      <span className="next-why">{whyWords(suggestion)}</span>
    </a>
  );
}
