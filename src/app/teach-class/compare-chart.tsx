import { useMemo, useState } from 'react';
import { message, say } from '../../i18n/index.ts';
import { lanesOf } from '../../view/index.ts';
import type { Facts } from '../session/protocol.ts';
import { useStore } from '../session/store.ts';
import { settings } from '../settings/settings.ts';
import { clockText } from '../working/clock-text.ts';
import { plantOfLibrary } from '../working/schematic-plant.ts';
import { readingIn } from '../working/view-words.ts';
import {
  bothUntilS,
  type CurveOf,
  commonSpan,
  curveOf,
  linedLanes,
  valueAtS,
} from './compare-lanes.ts';
import { LANE_HIGH, LANE_WIDE, pathsOf } from './compare-paths.ts';

interface Props {
  readonly facts: Facts;
  /** The first is drawn as a full line, the second dashed. */
  readonly runs: readonly [CurveOf, CurveOf];
  readonly names: readonly [string, string];
}

/** Two runs on one chart: lane by lane, the second one dashed over the first. */
export function CompareChart({ facts, runs, names }: Props) {
  const { units } = useStore(settings);
  const lanes = useMemo(
    () => linedLanes(lanesOf(facts.channels, plantOfLibrary(facts.scenario.plant)), facts.channels),
    [facts],
  );
  const { fromS, toS } = useMemo(() => commonSpan(runs), [runs]);
  const [cursorS, setCursor] = useState(() => bothUntilS(runs));
  const atS = Math.max(fromS, Math.min(toS, cursorS));
  const reading = readingIn(units, facts);
  const drawn = useMemo(
    () =>
      lanes.map(({ lane, look }) => ({
        lane,
        look,
        paths: pathsOf(
          runs.map((run) => curveOf(run, look.place)),
          look,
          { fromS, toS },
        ),
      })),
    [lanes, runs, fromS, toS],
  );
  const left = `${(100 * (atS - fromS)) / (toS - fromS)}%`;
  return (
    <div className="compare-chart">
      <ul className="compare-key">
        {names.map((name, place) => (
          <li key={name}>
            <svg viewBox="0 0 40 10" aria-hidden="true">
              <path d="M0 5H40" className="compare-line" data-run={place} />
            </svg>
            {say(place === 0 ? 'teach-class.compare.full' : 'teach-class.compare.dashed', { name })}
          </li>
        ))}
      </ul>
      <table>
        <thead>
          <tr>
            <th scope="col">{say('teach-class.compare.lane')}</th>
            <th scope="col">
              <span className="for-readers">{say('teach-class.compare.chart')}</span>
              <label className="compare-cursor">
                <span className="for-readers">{say('teach-class.compare.cursor')}</span>
                <input
                  type="range"
                  min={fromS}
                  max={toS}
                  step={facts.frameS}
                  value={atS}
                  aria-valuetext={timeText(atS)}
                  onChange={({ target }) => setCursor(Number(target.value))}
                />
              </label>
            </th>
            {names.map((name) => (
              <th key={name} scope="col">
                {name}
                <span className="quiet">{timeText(atS)}</span>
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {drawn.map(({ lane, look, paths }) => (
            <tr key={lane.id}>
              <th scope="row">{message(lane.name)}</th>
              <td className="compare-lane">
                <svg
                  viewBox={`0 0 ${LANE_WIDE} ${LANE_HIGH}`}
                  preserveAspectRatio="none"
                  aria-hidden="true"
                >
                  {paths.map((d, place) => (
                    <path
                      // biome-ignore lint/suspicious/noArrayIndexKey: two runs, in their places
                      key={place}
                      d={d}
                      className="compare-line"
                      data-run={place}
                      vectorEffect="non-scaling-stroke"
                    />
                  ))}
                </svg>
                <span className="compare-at" style={{ left }} aria-hidden="true" />
              </td>
              {runs.map((run, place) => {
                const value = valueAtS(run, look.place, atS);
                return (
                  <td key={names[place]}>
                    {value === null
                      ? '–'
                      : reading(value, lane.line?.unit ?? '', lane.line?.channel)}
                  </td>
                );
              })}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

/** On the common clock: before what they are laid on it counts down. */
function timeText(atS: number): string {
  return atS < 0 ? `−${clockText(-atS)}` : clockText(atS);
}
