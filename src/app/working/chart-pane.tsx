import { say } from '../../i18n/index.ts';
import type { Facts } from '../session/protocol.ts';
import type { Surroundings } from '../settings/theme.ts';
import { ChartHost } from './chart-host.tsx';

interface Props {
  readonly look: Surroundings;
  readonly channelsShown?: ((channels: Facts['channels']) => Facts['channels']) | undefined;
}

export function ChartPane({ look, channelsShown }: Props) {
  return (
    <section className="chart" aria-labelledby="chart-title">
      <h2 id="chart-title">{say('app.chart.title')}</h2>
      <ChartHost look={look} channelsShown={channelsShown} />
    </section>
  );
}
