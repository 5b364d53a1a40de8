import { toolOf } from '../../bench/index.ts';
import { type Message, say, sayMessage, sayWord } from '../../i18n/index.ts';
import type { Meter } from '../session/work-protocol.ts';
import { useFacts, useSession } from '../working/session-context.tsx';
import { Decay } from './decay.tsx';
import { placeWords, toolName } from './point-words.ts';
import { usePin } from './use-pin.ts';

interface Props {
  readonly meter: Meter;
  readonly mayPin: boolean;
  readonly onPinned: () => void;
  readonly onTakenOff: () => void;
}

/** A connected tool: where it is, and what its display shows at the head of the run. */
export function MeterLine({ meter, mayPin, onPinned, onTakenOff }: Props) {
  const facts = useFacts();
  const session = useSession();
  const pin = usePin();
  const { use, reading, issue } = meter;
  const tool = toolName(use.tool);
  const place = placeWords(facts, use.place, use.other ?? '', use.tool);
  const range = toolOf(use.tool)?.ranges.find(({ id }) => id === use.range);
  const pinIt = (words: string) => {
    pin({ what: use.tool, place: use.place, other: use.other, reading: words });
    onPinned();
  };
  return (
    <li className="meter" data-tool={use.tool} data-steady={reading?.steady ?? false}>
      <p className="meter-name">
        <strong>{tool}</strong>
        {range === undefined ? '' : `, ${sayMessage(range.name)}`}
        <span className="meter-place">{place}</span>
      </p>
      <output className="meter-reading">{displayWords(meter)}</output>
      {issue === null ? null : (
        <p className="meter-warn" role="alert">
          {sayMessage(issue.found)} {sayMessage(issue.mend)}
        </p>
      )}
      {reading?.warn === undefined ? null : (
        <p className="meter-warn" role="alert">
          {sayMessage(reading.warn)}
        </p>
      )}
      {reading === null || reading.flags.length === 0 ? null : (
        <p className="meter-flags">
          {reading.flags.map((flag) => (
            <span key={flag}>{sayWord('bench.flag', flag)}</span>
          ))}
        </p>
      )}
      {reading?.lines === undefined || reading.lines.length === 0 ? null : (
        <dl className="meter-lines">
          {reading.lines.map((line) => (
            <div key={sayMessage(line.what)}>
              <dt>{sayMessage(line.what)}</dt>
              <dd>{shownWords(line)}</dd>
            </div>
          ))}
        </dl>
      )}
      {sentences(meter).map((each) => (
        <p key={each} className="meter-note">
          {each}
        </p>
      ))}
      <p className="meter-acts">
        <button
          type="button"
          className="button"
          aria-label={say('job.tools.pin-it', { tool, place })}
          disabled={!mayPin || reading === null}
          onClick={() => pinIt(readingWords(meter))}
        >
          {say('job.tools.pin')}
        </button>
        <button
          type="button"
          className="button"
          aria-label={say('job.tools.take-off-it', { tool, place })}
          onClick={() => {
            session.disconnect(use);
            onTakenOff();
          }}
        >
          {say('job.tools.take-off')}
        </button>
        {use.tool === 'manometer' ? (
          <Decay meter={meter} place={place} mayPin={mayPin} onPin={pinIt} />
        ) : null}
      </p>
    </li>
  );
}

/** All that the display says, in one line for the notes. */
export function readingWords(meter: Meter): string {
  const lines = (meter.reading?.lines ?? []).map(
    (line) => `${sayMessage(line.what)} ${shownWords(line)}`,
  );
  const flags = (meter.reading?.flags ?? []).map((flag) => sayWord('bench.flag', flag));
  const display = lines.length > 0 ? [] : [displayWords(meter)];
  const said = [...display, ...lines, ...sentences(meter), ...flags];
  return said.filter((each) => each !== '').join('; ') || NOTHING;
}

/** A few words for a tag beside the place: its unit tells which tool it is. */
export function tagWords(meter: Meter): string {
  const display = displayWords(meter);
  if (display !== '' && display !== NOTHING) return display;
  const [first = ''] = sentences(meter);
  return `${toolName(meter.use.tool)} ${first || display}`.trim();
}

const NOTHING = '–';

function displayWords({ reading }: Meter): string {
  if (reading === null) return NOTHING;
  const hasMore = (reading.lines ?? []).length > 0 || sentences({ reading }).length > 0;
  return reading.shown === '' && hasMore ? '' : shownWords(reading);
}

function shownWords({ shown, unit }: { readonly shown: string; readonly unit: string }): string {
  return shown === '' ? NOTHING : `${shown} ${unit}`.replace('-', '−').trim();
}

function sentences({ reading }: Pick<Meter, 'reading'>): string[] {
  const said: Message[] = [
    ...(reading?.note === undefined ? [] : [reading.note]),
    ...(reading?.words ?? []),
  ];
  return said.map(sayMessage);
}
