interface Props<T extends string> {
  readonly legend: string;
  readonly all: readonly T[];
  readonly chosen: T;
  readonly nameOf: (one: T) => string;
  readonly onChoose: (one: T) => void;
}

/** One of a few, side by side. */
export function Segments<T extends string>({ legend, all, chosen, nameOf, onChoose }: Props<T>) {
  return (
    <fieldset className="package-choice">
      <legend>{legend}</legend>
      <div className="buttons">
        {all.map((one) => (
          <button
            key={one}
            type="button"
            className="button"
            aria-pressed={one === chosen}
            onClick={() => onChoose(one)}
          >
            {nameOf(one)}
          </button>
        ))}
      </div>
    </fieldset>
  );
}
