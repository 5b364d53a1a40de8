import type { Reasoning } from '../../diagnosis/index.ts';
import { say } from '../../i18n/index.ts';
import { shortClock } from '../working/clock-text.ts';
import { useWords } from './use-words.ts';

interface Props {
  readonly reasoning: Reasoning;
  /** Of the decision that is looked at, among all. */
  readonly place: number;
  readonly onPlace: (place: number) => void;
}

/** Which decision the run is looked at for, and the ways to the one before and the next. */
export function ReplayAt({ reasoning, place, onPlace }: Props) {
  const words = useWords();
  const { decisions, moments } = reasoning;
  const decision = decisions[place];
  if (decision === undefined) return null;
  const moment = moments.indexOf(place);
  const what = { time: shortClock(decision.t), what: words.decision(decision) };
  return (
    <div className="replay-at">
      <p role="status">
        {moment >= 0
          ? say('debrief.replay.moment', { n: moment + 1, count: moments.length, ...what })
          : say('debrief.replay.at', { n: place + 1, count: decisions.length, ...what })}
      </p>
      <p className="buttons">
        <Step to={place - 1} among={decisions.length} onPlace={onPlace}>
          {say('debrief.replay.previous')}
        </Step>
        <Step to={place + 1} among={decisions.length} onPlace={onPlace}>
          {say('debrief.replay.next')}
        </Step>
      </p>
    </div>
  );
}

function Step(props: {
  readonly to: number;
  readonly among: number;
  readonly onPlace: (place: number) => void;
  readonly children: string;
}) {
  const there = props.to >= 0 && props.to < props.among;
  return (
    <button
      type="button"
      className="button"
      aria-disabled={!there}
      onClick={() => {
        if (there) props.onPlace(props.to);
      }}
    >
      {props.children}
    </button>
  );
}
