import { useId } from 'react';

interface Props {
  readonly options: readonly string[];
  readonly chosen: number | null;
  readonly onChoose: (option: number) => void;
  /** Stands before each, where a drawing names them by letters. */
  readonly letters?: readonly string[];
  readonly onPoint?: (option: number | null) => void;
}

/** One of a few. */
export function ChoiceResponse(props: Props) {
  const { options, chosen, onChoose, letters, onPoint = nothing } = props;
  const name = useId();
  return (
    <ul className="item-options">
      {options.map((option, place) => (
        <li key={option}>
          <label className="item-option" data-chosen={chosen === place}>
            <input
              type="radio"
              name={name}
              checked={chosen === place}
              onChange={() => onChoose(place)}
              onFocus={() => onPoint(place)}
              onBlur={() => onPoint(null)}
            />
            {letters === undefined ? null : (
              <span className="item-letter" aria-hidden="true">
                {letters[place]}
              </span>
            )}
            <span>{option}</span>
          </label>
        </li>
      ))}
    </ul>
  );
}

const nothing = (): void => undefined;
