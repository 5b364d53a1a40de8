import { useState } from 'react';
import type { Reasoning } from '../../diagnosis/index.ts';
import { say } from '../../i18n/index.ts';
import type { ChartScale } from '../../view/index.ts';
import { panelChannels } from '../job/panel-channels.ts';
import type { Surroundings } from '../settings/theme.ts';
import { ChartHost } from '../working/chart-host.tsx';
import { useSession } from '../working/session-context.tsx';
import { DecisionList } from './decision-list.tsx';
import { DecisionMarks } from './decision-marks.tsx';

interface Props {
  readonly look: Surroundings;
  readonly reasoning: Reasoning | null;
}

/** One timeline: the run's start chart, and the decisions above it. */
export function WhatHappened({ look, reasoning }: Props) {
  const session = useSession();
  const [chosen, setChosen] = useState<number | null>(null);
  const [scale, setScale] = useState<ChartScale | null>(null);
  const choose = (place: number) => {
    const t = reasoning?.decisions[place]?.t;
    if (t === undefined) return;
    setChosen(place);
    session.scrub(t);
  };
  return (
    <>
      <p className="choices-lead">
        {say(reasoning === null ? 'debrief.happened-lead-only' : 'debrief.happened-lead')}
      </p>
      <div className="debrief-chart">
        {reasoning === null || scale === null ? null : (
          <DecisionMarks reasoning={reasoning} scale={scale} chosen={chosen} onChoose={choose} />
        )}
        <ChartHost look={look} channelsShown={panelChannels} onScale={setScale} />
      </div>
      {reasoning === null ? null : (
        <DecisionList reasoning={reasoning} chosen={chosen} onChoose={choose} />
      )}
    </>
  );
}
