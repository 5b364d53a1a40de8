import { useEffect } from 'react';
import { say, sayWord } from '../../i18n/index.ts';
import { type ChartScale, createStartChart } from '../../view/index.ts';
import type { Facts } from '../session/protocol.ts';
import { useStore } from '../session/store.ts';
import { settings } from '../settings/settings.ts';
import type { Surroundings } from '../settings/theme.ts';
import { feedRecorded } from './feed-recorded.ts';
import { plantOfLibrary } from './schematic-plant.ts';
import { useFacts, useSession, useSessionPart } from './session-context.tsx';
import { useViewObject } from './use-view-object.ts';
import { readingIn, viewMessage, vocabularyOf } from './view-words.ts';

interface Props {
  readonly look: Surroundings;
  /** Lanes only of what these leave a name; every channel keeps its place. */
  readonly channelsShown?: ((channels: Facts['channels']) => Facts['channels']) | undefined;
  /** Where time stands on the chart; the first one given is kept. */
  readonly onScale?: ((scale: ChartScale) => void) | undefined;
}

export function ChartHost({ look, channelsShown = (channels) => channels, onScale }: Props) {
  const session = useSession();
  const facts = useFacts();
  const { units } = useStore(settings);
  const revision = useSessionPart((state) => state.revision);
  const { host, object, phase } = useViewObject(
    facts.scenario.id,
    async (element) => {
      const chart = createStartChart(element, {
        channels: channelsShown(facts.channels),
        plant: plantOfLibrary(facts.scenario.plant),
        vocabulary: vocabularyOf(facts),
        message: viewMessage,
        reading: readingIn(units, facts),
        stepName: (step) => sayWord('step', step, '.title'),
        theme: look.theme,
        frameS: facts.frameS,
        ...(onScale === undefined ? {} : { onScale }),
        onScrub(tS, settled) {
          session.scrub(tS);
          if (settled) session.settle();
        },
      });
      return chart;
    },
    (chart) => {
      const feed = feedRecorded(chart, session);
      return session.onMoment(({ tS, headS, lookingBack }) => {
        feed();
        chart.showNow(lookingBack ? headS : tS);
        chart.setCursor(lookingBack ? tS : null);
      });
    },
  );
  // biome-ignore lint/correctness/useExhaustiveDependencies: the expected run arrives with a revision
  useEffect(() => {
    const expected = session.expectedFrames();
    if (object !== null && expected !== null) object.setExpected(expected);
  }, [object, session, revision]);
  useEffect(() => object?.setTheme(look.theme), [object, look.theme]);
  useEffect(() => object?.setWords({ reading: readingIn(units, facts) }), [object, units, facts]);
  return (
    <div className="chart-host" ref={host}>
      {phase === 'failed' ? <p className="chart-failed">{say('app.chart.not-drawn')}</p> : null}
    </div>
  );
}
