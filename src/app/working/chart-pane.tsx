import { useState } from 'react';
import { say } from '../../i18n/index.ts';
import type { Facts } from '../session/protocol.ts';
import type { Surroundings } from '../settings/theme.ts';
import { ChartHost } from './chart-host.tsx';

interface Props {
  readonly look: Surroundings;
  readonly channelsShown?: ((channels: Facts['channels']) => Facts['channels']) | undefined;
}

/** The start chart; folded away it leaves its room to the plant. */
export function ChartPane({ look, channelsShown }: Props) {
  const [open, setOpen] = useState(true);
  return (
    <section className="chart" data-open={open} aria-labelledby="chart-title">
      <h2 id="chart-title">
        <button
          type="button"
          className="chart-fold"
          aria-expanded={open}
          onClick={() => setOpen(!open)}
        >
          {say('app.chart.title')}
          <svg width="12" height="12" viewBox="0 0 12 12" aria-hidden="true">
            <path
              d={open ? 'M2 4l4 4l4 -4' : 'M4 2l4 4l-4 4'}
              fill="none"
              stroke="currentColor"
              strokeWidth="2"
            />
          </svg>
        </button>
      </h2>
      {open ? <ChartHost look={look} channelsShown={channelsShown} /> : null}
    </section>
  );
}
