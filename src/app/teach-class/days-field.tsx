import { say } from '../../i18n/index.ts';

interface Props {
  readonly text: string;
  readonly wrong: boolean;
  readonly onChange: (text: string) => void;
}

/** How long the server keeps what learners did. */
export function DaysField({ text, wrong, onChange }: Props) {
  return (
    <>
      <label className="field open-days">
        <span>{say('teach-class.days')}</span>
        <input
          inputMode="numeric"
          value={text}
          aria-invalid={wrong}
          aria-describedby="open-days-about"
          onChange={({ target }) => onChange(target.value)}
        />
      </label>
      <p className={wrong ? 'invalid' : 'quiet'} id="open-days-about">
        {say(wrong ? 'teach-class.days.wrong' : 'teach-class.days.about')}
      </p>
    </>
  );
}
