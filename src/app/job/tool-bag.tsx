import { useEffect, useRef, useState } from 'react';
import type { ToolId } from '../../../machines/job/index.ts';
import { say } from '../../i18n/index.ts';
import { useLockedTools } from '../class-run/locked-tools.ts';
import { useStorePart } from '../session/store.ts';
import { useFacts, useSession } from '../working/session-context.tsx';
import { useExercise } from './exercise-context.tsx';
import { MeterLine, readingWords } from './meter-line.tsx';
import { toolName } from './point-words.ts';
import { ToolForm } from './tool-form.tsx';
import { usePin } from './use-pin.ts';

/** What is connected and what it reads; and the bag, to connect more. */
interface Props {
  /** A test point that was picked on the drawing; '' when none was. */
  readonly place: string;
}

export function ToolBag({ place }: Props) {
  const session = useSession();
  const { desk } = useExercise();
  const meters = useStorePart(session.atThePlant, (state) => state.meters);
  const pin = usePin();
  const list = useRef<HTMLElement>(null);
  const [said, setSaid] = useState('');
  const locked = useLockedTools();
  const all = desk.tools as readonly ToolId[];
  const bag = all.filter((each) => !locked.includes(each));
  const fits = useFitting(place, bag);
  const [wanted, setTool] = useState<ToolId | null>(fits ?? bag[0] ?? null);
  const tool = wanted !== null && bag.includes(wanted) ? wanted : (bag[0] ?? null);
  useEffect(() => {
    if (fits !== null) setTool(fits);
  }, [fits]);
  const lockedHere =
    bag.length === all.length ? null : (
      <p className="quiet">
        {say('job.tools.locked', {
          tools: all
            .filter((each) => locked.includes(each))
            .map(toolName)
            .join(', '),
        })}
      </p>
    );
  if (tool === null) {
    return lockedHere ?? <p className="quiet">{say('job.tools.empty-bag')}</p>;
  }
  const mayPin = desk.phase !== 'handover';
  const pinned = () => setSaid(say('job.tools.pinned'));
  const readable = meters.filter(({ reading }) => reading !== null);
  return (
    <div className="tool-bag">
      <section aria-labelledby="connected-title" ref={list} tabIndex={-1}>
        <h3 id="connected-title">{say('job.tools.connected')}</h3>
        {meters.length === 0 ? <p className="quiet">{say('job.tools.none')}</p> : null}
        <ul className="meters">
          {meters.map((meter) => (
            <MeterLine
              key={`${meter.use.tool} ${meter.use.place} ${meter.use.other} ${meter.use.range}`}
              meter={meter}
              mayPin={mayPin}
              onPinned={pinned}
              onTakenOff={() => list.current?.focus()}
            />
          ))}
        </ul>
        {readable.length < 2 ? null : (
          <button
            type="button"
            className="button"
            disabled={!mayPin}
            onClick={() => {
              for (const meter of readable) {
                const { tool, place, other } = meter.use;
                pin({ what: tool, place, other, reading: readingWords(meter) });
              }
              pinned();
            }}
          >
            {say('job.tools.pin-all')}
          </button>
        )}
        <p className="for-readers" role="status">
          {said}
        </p>
      </section>
      <details className="fold" open={true}>
        <summary>{say('job.tools.connect')}</summary>
        {lockedHere}
        <ToolForm
          bag={bag}
          key={place}
          place={place}
          tool={tool}
          onTool={setTool}
          onConnect={(use) => {
            session.connect(use);
            list.current?.closest('[role="tabpanel"]')?.scrollTo(0, 0);
          }}
        />
      </details>
    </div>
  );
}

/** The first tool of the bag that goes on a place. */
function useFitting(place: string, bag: readonly ToolId[]): ToolId | null {
  const facts = useFacts();
  const point = facts.testPoints.find(({ id }) => id === place);
  return bag.find((tool) => point?.tools.includes(tool)) ?? null;
}
