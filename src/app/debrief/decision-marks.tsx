import { useEffect, useRef, useState } from 'react';
import type { Reasoning } from '../../diagnosis/index.ts';
import { say } from '../../i18n/index.ts';
import type { ChartScale } from '../../view/index.ts';
import { shortClock } from '../working/clock-text.ts';
import { MARK_PX, spreadMarks } from './spread-marks.ts';

/** Height of the lines that lead from the marks to their moments, px. */
const LEAD_PX = 16;

interface Props {
  readonly reasoning: Reasoning;
  readonly scale: ChartScale;
  /** Place of the decision that is looked at. */
  readonly chosen: number | null;
  readonly onChoose: (place: number) => void;
}

/** The decisions above the chart: a stroke each, and a number for those worth going back to. */
export function DecisionMarks({ reasoning, scale, chosen, onChoose }: Props) {
  const { decisions, moments } = reasoning;
  const row = useRef<HTMLDivElement>(null);
  const [widthPx, setWidthPx] = useState(0);
  useEffect(() => {
    const element = row.current;
    if (element === null) return;
    const observer = new ResizeObserver(() => setWidthPx(element.clientWidth));
    observer.observe(element);
    return () => observer.disconnect();
  }, []);
  const xOf = (place: number) => scale.leftPx + (decisions[place]?.t ?? 0) * scale.pxPerS;
  const lefts = spreadMarks(moments.map(xOf), widthPx);
  return (
    <div className="decision-marks" ref={row}>
      {moments.map((place, at) => (
        <button
          key={place}
          type="button"
          className="decision-mark"
          style={{ left: lefts[at] }}
          aria-pressed={chosen === place}
          aria-label={say('debrief.moment.at', {
            n: at + 1,
            time: shortClock(decisions[place]?.t ?? 0),
          })}
          onClick={() => onChoose(place)}
        >
          <span>{at + 1}</span>
        </button>
      ))}
      <svg width="100%" height={LEAD_PX} aria-hidden="true">
        {decisions.map((each, place) => (
          <line
            key={`${each.t} ${each.kind} ${each.what}`}
            x1={xOf(place)}
            x2={xOf(place)}
            y1={LEAD_PX - 6}
            y2={LEAD_PX}
            data-chosen={chosen === place}
          />
        ))}
        {moments.map((place, at) => (
          <line
            key={place}
            className="decision-lead"
            x1={(lefts[at] ?? 0) + MARK_PX / 2}
            x2={xOf(place)}
            y1={0}
            y2={LEAD_PX}
            data-chosen={chosen === place}
          />
        ))}
      </svg>
    </div>
  );
}
