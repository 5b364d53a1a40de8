import { say, sayWord } from '../../i18n/index.ts';

export const METER_KINDS = ['volts', 'ohms', 'continuity', 'amps'] as const;
export type MeterKind = (typeof METER_KINDS)[number];

export interface StripReading {
  /** The display's digits; empty when it shows none. */
  readonly shown: string;
  readonly unit: string;
  readonly flags: readonly string[];
}

interface Props {
  /** What the meter in use shows; null while it is not connected. */
  readonly reading: StripReading | null;
  readonly kind: MeterKind;
  readonly onKind: (kind: MeterKind) => void;
  readonly onClear: () => void;
}

/** What the leads read, and what the meter is set to. */
export function LadderMeterStrip({ reading, kind, onKind, onClear }: Props) {
  return (
    <div className="ladder-meter">
      <select
        className="ladder-meter-kind"
        aria-label={say('ladder.meter.kind')}
        value={kind}
        onChange={(event) => onKind(event.target.value as MeterKind)}
      >
        {METER_KINDS.map((each) => (
          <option key={each} value={each}>
            {say(`ladder.meter.${each}`)}
          </option>
        ))}
      </select>
      <p className="ladder-meter-reading" data-connected={reading !== null}>
        {reading === null ? (
          <span className="ladder-meter-nothing">{say('ladder.meter.nothing')}</span>
        ) : (
          <>
            <strong>{reading.shown === '' ? '– – –' : reading.shown}</strong> {reading.unit}
            {reading.flags.map((flag) => (
              <span key={flag} className="ladder-meter-flag">
                {sayWord('bench.flag', flag)}
              </span>
            ))}
          </>
        )}
      </p>
      <button
        type="button"
        className="button ladder-meter-clear"
        aria-label={say('ladder.meter.clear')}
        title={say('ladder.meter.clear')}
        onClick={onClear}
      >
        <svg width="16" height="16" viewBox="0 0 16 16" aria-hidden="true">
          <path d="M3 3L13 13M13 3L3 13" stroke="currentColor" strokeWidth="2" />
        </svg>
      </button>
    </div>
  );
}
