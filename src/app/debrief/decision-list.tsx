import type { Reasoning } from '../../diagnosis/index.ts';
import { say } from '../../i18n/index.ts';
import { shortClock } from '../working/clock-text.ts';
import { minutesText } from './minutes-text.ts';
import { useWords } from './use-words.ts';

interface Props {
  readonly reasoning: Reasoning;
  readonly chosen: number | null;
  readonly onChoose: (place: number) => void;
}

/** Every decision in order, with what stood against it; one that is chosen is shown in the chart. */
export function DecisionList({ reasoning, chosen, onChoose }: Props) {
  const words = useWords();
  const { decisions, moments } = reasoning;
  return (
    <section className="decisions" aria-labelledby="decisions-title">
      <h3 id="decisions-title">{say('debrief.decisions')}</h3>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: keys can only scroll what has the focus */}
      <ol className="decision-list" tabIndex={0} aria-labelledby="decisions-title">
        {decisions.map((each, place) => {
          const n = moments.indexOf(place) + 1;
          return (
            <li key={`${each.t} ${each.kind} ${each.what}`}>
              <button
                type="button"
                className="decision"
                aria-pressed={chosen === place}
                onClick={() => onChoose(place)}
              >
                <span className="decision-time">{shortClock(each.t)}</span>
                <span className="decision-what">
                  {words.decision(each)}
                  <Marks n={n} decision={each} />
                </span>
                <span className="decision-minutes">
                  {each.minutes > 0
                    ? say('debrief.minutes-short', { minutes: minutesText(each.minutes) })
                    : ''}
                </span>
              </button>
            </li>
          );
        })}
      </ol>
    </section>
  );
}

function Marks(props: { readonly n: number; readonly decision: Reasoning['decisions'][number] }) {
  const { n, decision } = props;
  const marks = [
    ...(n > 0 ? [say('debrief.mark.moment', { n })] : []),
    ...(decision.redundant ? [say('debrief.mark.redundant')] : []),
    ...(decision.premature ? [say('debrief.mark.premature')] : []),
    ...(decision.kind === 'suspect' && decision.refutedBy.length > 0
      ? [say('debrief.mark.refuted')]
      : []),
  ];
  return marks.map((mark, at) => (
    <span key={mark} className="decision-tag" data-moment={at === 0 && n > 0}>
      {mark}
    </span>
  ));
}
