import { say } from '../../../i18n/index.ts';
import type { Unit } from '../../../quantity/index.ts';
import { severityScale, severityText } from '../../reading/severity-scale.ts';
import { useStore } from '../../session/store.ts';
import { settings } from '../../settings/settings.ts';
import { useFaults } from './fault-field.tsx';
import { type FieldProps, labelOf, useForm } from './form-context.ts';
import { NumberField } from './number-field.tsx';

/** How bad it is: by a slider over what is worth teaching, and as a number in the fault's own unit. */
export function SeverityField({ path, schema, value, required, beside }: FieldProps) {
  const { edit } = useForm();
  const { units } = useStore(settings);
  const fault = useFaults().find(({ id }) => id === beside.fault);
  if (fault === undefined) return <NumberField {...{ path, schema, value, required }} />;
  const { low, high, typical, means, unit } = fault;
  const shownUnit = unit === '1' ? undefined : unit;
  const severity = typeof value === 'number' ? value : typical;
  const scale = severityScale(low, high);
  const text = severityText(unit as Unit, severity, units);
  const params = { means, low, high, typical, unit: unit === '1' ? '' : ` ${unit}` };
  return (
    <div className="author-severity">
      <NumberField
        path={path}
        schema={schema}
        value={value}
        required={required}
        hint={say(high > low ? 'author.severity.range' : 'author.severity.fixed', params)}
        {...(shownUnit === undefined ? {} : { unit: shownUnit })}
      />
      {high > low ? (
        <label className="author-slider">
          <span>
            {say('author.severity.slider', { label: labelOf(path) })} <strong>{text}</strong>
          </span>
          <input
            type="range"
            min={0}
            max={1}
            step={0.005}
            value={Math.min(1, Math.max(0, scale.placeOf(severity)))}
            aria-valuetext={text}
            onChange={({ target }) =>
              edit(
                { do: 'set', path, value: rounded(scale.at(Number(target.value)), low, high) },
                `field ${path.join('.')}`,
              )
            }
          />
        </label>
      ) : null}
    </div>
  );
}

/** As a person would write it, and still within the bounds. */
function rounded(severity: number, low: number, high: number): number {
  return Math.min(high, Math.max(low, Number(severity.toPrecision(3))));
}
