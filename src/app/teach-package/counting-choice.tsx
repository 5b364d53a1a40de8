import { say } from '../../i18n/index.ts';
import { XAPI_VERSIONS, type XapiVersion } from '../../records/index.ts';
import { PACKAGE_FORMS, type PackageForm } from '../../records/lms/index.ts';
import { wholeWithin } from '../teach-paper/whole-number.ts';
import { Segments } from './segments.tsx';

export interface Counting {
  readonly form: PackageForm;
  readonly xapi: XapiVersion;
  readonly masteryText: string;
}
export const USUAL_COUNTING: Counting = { form: 'scorm12', xapi: '1.0.3', masteryText: '70' };

/** Null: only done or not; undefined where the text is no such number. */
export function masteryOf({ masteryText }: Counting): number | null | undefined {
  if (masteryText.trim() === '') return null;
  const percent = wholeWithin(masteryText, 1, 100);
  return percent === null ? undefined : percent / 100;
}

interface Props {
  readonly counting: Counting;
  readonly onChange: (counting: Counting) => void;
}

/** For which kind of learning system, and from where it is passed. */
export function CountingChoice({ counting, onChange }: Props) {
  const { form, xapi, masteryText } = counting;
  const isWrong = masteryOf(counting) === undefined;
  return (
    <>
      <div>
        <Segments
          legend={say('package.form')}
          all={PACKAGE_FORMS}
          chosen={form}
          nameOf={(one) => say(`package.form.${one}`)}
          onChoose={(one) => onChange({ ...counting, form: one })}
        />
        <p className="quiet">{say(`package.form.${form}.about`)}</p>
      </div>
      {form === 'cmi5' ? (
        <Segments
          legend={say('package.xapi')}
          all={XAPI_VERSIONS}
          chosen={xapi}
          nameOf={(one) => one}
          onChoose={(one) => onChange({ ...counting, xapi: one })}
        />
      ) : null}
      <div>
        <label className="field package-number">
          <span>{say('package.mastery')}</span>
          <input
            inputMode="numeric"
            value={masteryText}
            aria-invalid={isWrong}
            aria-describedby="package-mastery-about"
            onChange={({ target }) => onChange({ ...counting, masteryText: target.value })}
          />
        </label>
        <p className={isWrong ? 'invalid' : 'quiet'} id="package-mastery-about">
          {say(isWrong ? 'package.mastery.wrong' : 'package.mastery.about')}
        </p>
      </div>
    </>
  );
}
