import { GUIDANCE_MODES, type Guidance } from '../../../machines/job/index.ts';
import { say } from '../../i18n/index.ts';

/** Jobs up to this level are learnt on. */
const GUIDED_LEVEL = 2;

/** What is set before anything was chosen. */
export function guidanceFor(level: number): Guidance {
  return level <= GUIDED_LEVEL ? 'guided' : 'practice';
}

interface Props {
  readonly chosen: Guidance;
  readonly onChoose: (mode: Guidance) => void;
}

/** Before the drive: how much help there is to be on the way. */
export function GuidanceChoice({ chosen, onChoose }: Props) {
  return (
    <fieldset className="guidance-choice">
      <legend>{say('guide.choice')}</legend>
      {GUIDANCE_MODES.map((mode) => (
        <label className="check" key={mode}>
          <input
            type="radio"
            name="guidance"
            value={mode}
            checked={mode === chosen}
            onChange={() => onChoose(mode)}
          />
          <span>
            <strong>{say(`guide.mode.${mode}`)}</strong>
            <span className="quiet">{say(`guide.mode.${mode}.lead`)}</span>
          </span>
        </label>
      ))}
    </fieldset>
  );
}
