import { type FormEvent, useId, useState } from 'react';
import type { ToolId } from '../../../machines/job/index.ts';
import type { ToolUse } from '../../bench/index.ts';
import { placeLabel, toolOf } from '../../bench/index.ts';
import { say, sayMessage } from '../../i18n/index.ts';
import type { Facts } from '../session/protocol.ts';
import { useFacts } from '../working/session-context.tsx';
import { ChoiceList } from './choice-list.tsx';
import { toolName } from './point-words.ts';

interface Props {
  readonly bag: readonly ToolId[];
  /** Picked on the drawing; taken where the tool goes on it. */
  readonly place: string;
  readonly tool: ToolId;
  readonly onTool: (tool: ToolId) => void;
  readonly onConnect: (use: ToolUse) => void;
}

/** Which tool, where, and how it is set. */
export function ToolForm({ bag, place: picked, tool, onTool, onConnect }: Props) {
  const facts = useFacts();
  const id = useId();
  const [placeWanted, setPlace] = useState(picked);
  const [otherWanted, setOther] = useState('');
  const [rangeWanted, setRange] = useState('');
  const kind = toolOf(tool);
  const points = pointsOf(facts, tool);
  // Another tool is taken in the same form, so that the list keeps the focus; what does not go with it lapses.
  const fitting = (wanted: string) => (points.some(({ value }) => value === wanted) ? wanted : '');
  const place = fitting(placeWanted);
  const takesOther = kind !== null && kind.other !== 'never';
  const other = takesOther && otherWanted !== place ? fitting(otherWanted) : '';
  const ranges = kind?.ranges ?? [];
  const range = (ranges.find(({ id: each }) => each === rangeWanted) ?? ranges[0])?.id ?? '';
  const ready = place !== '' && (kind?.other !== 'must' || other !== '');
  function connect(event: FormEvent): void {
    event.preventDefault();
    if (!ready) return;
    onConnect({
      tool,
      place,
      ...(other === '' ? {} : { other }),
      ...(range === '' ? {} : { range }),
    });
  }
  return (
    <form className="work-form" onSubmit={connect} aria-label={say('job.tools.connect')}>
      <ChoiceList
        label={say('job.tools.tool')}
        value={tool}
        options={bag.map((each) => ({ value: each, text: toolName(each) }))}
        onChoose={(next) => onTool(next as ToolId)}
      />
      <ChoiceList
        label={say(takesOther ? 'job.tools.from' : 'job.tools.where')}
        value={place}
        empty={say('job.tools.choose-place')}
        options={points}
        onChoose={setPlace}
      />
      {takesOther ? (
        <ChoiceList
          label={say('job.tools.to')}
          value={other}
          empty={say(kind.other === 'must' ? 'job.tools.choose-place' : 'job.tools.no-second')}
          options={points.filter(({ value }) => value !== place)}
          onChoose={setOther}
        />
      ) : null}
      {ranges.length < 2 ? null : (
        <fieldset className="range-choice">
          <legend>{say('job.tools.range')}</legend>
          <div className="segments">
            {ranges.map((each) => (
              <button
                key={each.id}
                type="button"
                className="button"
                aria-pressed={each.id === range}
                onClick={() => setRange(each.id)}
              >
                {sayMessage(each.name)}
              </button>
            ))}
          </div>
        </fieldset>
      )}
      {kind?.caution == null ? null : (
        <p className="caution" id={id}>
          {sayMessage(kind.caution)}
        </p>
      )}
      <button type="submit" className="button primary" disabled={!ready}>
        {say('job.tools.do-connect')}
      </button>
    </form>
  );
}

function pointsOf(facts: Facts, tool: ToolId) {
  return facts.testPoints
    .filter(({ tools }) => tools.includes(tool))
    .map((point) => ({ value: point.id, text: sayMessage(placeLabel(point, tool)) }));
}
