import { say } from '../../i18n/index.ts';

interface Props<T extends string> {
  readonly legend: string;
  readonly all: readonly T[];
  /** None: all. */
  readonly chosen: readonly T[];
  readonly nameOf: (one: T) => string;
  readonly onChange: (chosen: readonly T[]) => void;
}

/** Some of several; with none chosen all are meant, and the first button says so. */
export function ChoiceOfSome<T extends string>({
  legend,
  all,
  chosen,
  nameOf,
  onChange,
}: Props<T>) {
  if (all.length < 2) return null;
  return (
    <fieldset className="paper-some">
      <legend>{legend}</legend>
      <div className="buttons">
        <button
          type="button"
          className="button"
          aria-pressed={chosen.length === 0}
          onClick={() => onChange([])}
        >
          {say('quiz.paper.all')}
        </button>
        {all.map((one) => (
          <button
            key={one}
            type="button"
            className="button"
            aria-pressed={chosen.includes(one)}
            onClick={() =>
              onChange(
                chosen.includes(one) ? chosen.filter((other) => other !== one) : [...chosen, one],
              )
            }
          >
            {nameOf(one)}
          </button>
        ))}
      </div>
    </fieldset>
  );
}
