import { TOOL_IDS, type ToolId } from '../../../machines/job/index.ts';
import { say } from '../../i18n/index.ts';
import { toolName } from './point-words.ts';

interface Props {
  /** What the exercise lets one take. */
  readonly permitted: readonly ToolId[] | 'all';
  readonly taken: readonly ToolId[];
  readonly onTaken: (tools: readonly ToolId[]) => void;
}

/** What to take out of the van. */
export function ToolChoice({ permitted, taken, onTaken }: Props) {
  const offered = permittedTools(permitted);
  return (
    <fieldset className="tool-choice">
      <legend>{say('job.card.tools')}</legend>
      <p className="quiet">{say('job.card.tools-lead')}</p>
      <div className="tool-choice-list">
        {offered.map((tool) => (
          <label className="check" key={tool}>
            <input
              type="checkbox"
              checked={taken.includes(tool)}
              onChange={({ target }) =>
                onTaken(
                  offered.filter((each) => (each === tool ? target.checked : taken.includes(each))),
                )
              }
            />
            {toolName(tool)}
          </label>
        ))}
      </div>
      <p>
        <button
          type="button"
          className="button"
          onClick={() => onTaken(taken.length === offered.length ? [] : offered)}
        >
          {say(taken.length === offered.length ? 'job.card.none' : 'job.card.all')}
        </button>
      </p>
    </fieldset>
  );
}

export function permittedTools(permitted: readonly ToolId[] | 'all'): readonly ToolId[] {
  return permitted === 'all' ? TOOL_IDS : TOOL_IDS.filter((tool) => permitted.includes(tool));
}
