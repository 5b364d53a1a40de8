import { useState } from 'react';
import { TOOL_IDS } from '../../../machines/job/index.ts';
import { say, sayWord } from '../../i18n/index.ts';
import { useBook, useTeach } from './teach-context.ts';

/** Tools that nobody may use for now, so that a class has to do without. */
export function ToolsPanel() {
  const { say: tell } = useTeach();
  const { lockedTools } = useBook();
  const [chosen, setChosen] = useState<readonly string[]>(lockedTools);
  const same =
    chosen.length === lockedTools.length && chosen.every((tool) => lockedTools.includes(tool));
  return (
    <>
      <p className="quiet">{say('teach-class.tools.about')}</p>
      <fieldset>
        <legend className="for-readers">{say('teach-class.panel.tools')}</legend>
        {TOOL_IDS.map((tool) => (
          <label key={tool} className="check">
            <input
              type="checkbox"
              checked={chosen.includes(tool)}
              onChange={({ target }) =>
                setChosen(target.checked ? [...chosen, tool] : chosen.filter((one) => one !== tool))
              }
            />
            {sayWord('bench.tool', tool)}
          </label>
        ))}
      </fieldset>
      <button
        type="button"
        className="button primary"
        disabled={same}
        onClick={() => void tell({ type: 'lock tools', tools: [...chosen] })}
      >
        {say(chosen.length === 0 ? 'teach-class.tools.free' : 'teach-class.tools.lock')}
      </button>
      <p className="quiet" role="status">
        {lockedTools.length === 0
          ? say('teach-class.tools.none')
          : say('teach-class.tools.locked', {
              tools: lockedTools.map((tool) => sayWord('bench.tool', tool)).join(', '),
            })}
      </p>
    </>
  );
}
