import { say } from '../../i18n/index.ts';
import type { Surroundings } from '../settings/theme.ts';
import { ChartHost } from './chart-host.tsx';

export function ChartPane({ look }: { readonly look: Surroundings }) {
  return (
    <section className="chart" aria-labelledby="chart-title">
      <h2 id="chart-title">{say('app.chart.title')}</h2>
      <ChartHost look={look} />
    </section>
  );
}
