import { useEffect } from 'react';
import { say } from '../../i18n/index.ts';
import { displayOf, type UnitSystem } from '../../quantity/index.ts';
import { loadTrends, type Trends } from '../../view/index.ts';
import { channelName } from '../../wording/index.ts';
import type { Facts } from '../session/protocol.ts';
import { useStore } from '../session/store.ts';
import { settings } from '../settings/settings.ts';
import type { Surroundings } from '../settings/theme.ts';
import { feedRecorded } from './feed-recorded.ts';
import { useFacts, useSession } from './session-context.tsx';
import { useViewObject } from './use-view-object.ts';
import { viewMessage } from './view-words.ts';

interface Props {
  readonly look: Surroundings;
  readonly chosen: readonly string[];
  readonly onTrends: (trends: Trends | null) => void;
}

export function TrendsHost({ look, chosen, onTrends }: Props) {
  const session = useSession();
  const facts = useFacts();
  const { units } = useStore(settings);
  const { host, object, phase } = useViewObject(
    facts.scenario.id,
    async (element) => {
      const { createTrends } = await loadTrends();
      return createTrends(element, {
        channels: facts.channels,
        nameOf: channelName,
        message: viewMessage,
        displayOf: displayIn(facts, units),
        theme: look.theme,
        frameS: facts.frameS,
      });
    },
    (trends) => {
      const feed = feedRecorded(trends, session);
      return session.onMoment(({ tS }) => {
        feed();
        trends.showNow(tS);
      });
    },
  );
  useEffect(() => {
    onTrends(object);
    return () => onTrends(null);
  }, [object, onTrends]);
  useEffect(() => object?.setQuantities(chosen), [object, chosen]);
  useEffect(() => object?.setTheme(look.theme), [object, look.theme]);
  useEffect(() => object?.setWords({ displayOf: displayIn(facts, units) }), [object, facts, units]);
  return (
    <div className="trends-host" ref={host}>
      {phase === 'failed' ? <p className="quiet">{say('app.trends.not-drawn')}</p> : null}
      {chosen.length === 0 ? <p className="trends-none">{say('app.trends.none')}</p> : null}
    </div>
  );
}

function displayIn({ channels }: Facts, units: UnitSystem) {
  return (id: string) =>
    displayOf(channels.find((channel) => channel.id === id)?.kind ?? 'number', units);
}
